/** What a junction is called: by what hangs on it, else by what branches off there, as people point at it. */
import type { GasHung, GasNode } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';

export const SUPPLY = 'supply';

/** As many of what hangs behind a tee as a row can name. */
const NAMED = 3;

/** A name is what people call it; the lump and what nobody named go by their kind. */
export function hungName({ name, id, kind }: GasHung, text: AppText): string {
  if (kind === 'lump') return text.phrase('gas.existing');
  if (name !== id) return name;
  return text.phrase(kind === 'heater' ? 'gas.heater' : 'gas.appliance');
}

/** A heater that nobody named goes by its kind. */
export function heaterName({ id, name }: Pick<GasHung, 'id' | 'name'>, text: AppText): string {
  return name === id ? text.phrase('gas.heater') : name;
}

/** Short, for the foot of the picture. */
export function nodeName(node: GasNode, text: AppText, metered: boolean): string {
  if (node.id === SUPPLY) return text.phrase(metered ? 'gas.meter' : 'gas.supply');
  const [first, ...more] = pointsAt(node).map((one) => hungName(one, text));
  if (first === undefined) return '';
  return more.length === 0 ? first : `${first} +${more.length}`;
}

/** In full, for a row and for who listens. */
export function nodeLabel(node: GasNode, text: AppText, metered: boolean): string {
  if (node.id === SUPPLY) return text.phrase(metered ? 'gas.meter' : 'gas.supply');
  const [only] = node.branches.length === 0 && node.hung.length === 1 ? node.hung : [];
  if (only !== undefined) return hungName(only, text);
  const to = pointsAt(node).map((one) => hungName(one, text));
  const more = to.length > NAMED ? ` +${to.length - NAMED}` : '';
  if (to.length > 0) return text.phrase('gas.tee-to', { names: `${to.slice(0, NAMED).join(', ')}${more}` });
  return text.phrase(node.branches.length > 0 ? 'gas.joint' : 'gas.free-end');
}

function pointsAt(node: GasNode): readonly GasHung[] {
  if (node.hung.length > 0) return node.hung;
  const side = node.leads || node.branches.length > 1 ? node.branches.slice(0, -1) : [];
  return side.flatMap(({ end }) => everything(end));
}

export function everything(node: GasNode): readonly GasHung[] {
  return [...node.hung, ...node.branches.flatMap(({ end }) => everything(end))];
}

export function nodesOf(node: GasNode): readonly GasNode[] {
  return [node, ...node.branches.flatMap(({ end }) => nodesOf(end))];
}
