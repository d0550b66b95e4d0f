/** Which outputs of a sum are shown and in which units: `capacity`, or `capacity [ft3/h]`. */
import { quantity } from '@firstfire/engine';
import type { AnySum } from '@firstfire/sums';
import { problem } from '../problem.ts';

export interface Column {
  readonly name: string;
  readonly unit: string;
  readonly kind: quantity.Kind;
}

const HEAD = /^\s*([^[\]]+?)\s*(?:\[\s*([^\]]+?)\s*\])?\s*$/;

/** Splits `name [unit]`. */
export function splitHead(head: string): { name: string; unit?: string } {
  const [, name = head, unit] = HEAD.exec(head) ?? [];
  return unit === undefined ? { name } : { name, unit };
}

export function outputColumns(sum: AnySum, wanted: readonly string[]): readonly Column[] {
  const all = Object.keys(sum.outputs);
  return (wanted.length > 0 ? wanted : all).map((head) => {
    const { name, unit } = splitHead(head);
    const output = Object.hasOwn(sum.outputs, name) ? sum.outputs[name] : undefined;
    if (output === undefined)
      throw problem('cli.sum.no-output', { sum: sum.name, name, list: all.join(', ') });
    const chosen = unit ?? output.unit;
    const known = quantity.valueInSi(1, chosen, output.kind);
    if (!known.ok) {
      throw problem('cli.sum.no-unit', { unit: chosen, name, list: unitNames(output.kind) });
    }
    return { name, unit: chosen, kind: output.kind };
  });
}

/** Units of a kind, as they are typed. */
export function unitNames(kind: quantity.Kind): string {
  return quantity
    .unitsOf(kind)
    .map((one) => one.id)
    .join(', ');
}
