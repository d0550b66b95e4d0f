/**
 * Height of every junction above the supply, from the rises of the pipes between.
 *
 * Errors: `contradiction` where two ways round a loop end at heights more than a centimetre apart; `ill-formed` with
 * reason `cut-off` for a junction that nothing ties to the supply.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import type { GasLink, GasSystemSpec } from './system-spec.ts';

const TOLERANCE = 0.01;

/** Junctions in the order they are met from the supply, with their heights (m). */
export function junctionHeights(spec: GasSystemSpec): Result<ReadonlyMap<string, number>> {
  const heights = new Map([[spec.supply.node, 0]]);
  const issues: Issue[] = [];
  const touching = linksByNode(spec.links);
  for (const [node, height] of heights) {
    for (const link of touching.get(node) ?? []) {
      const rise = link.type === 'pipe' ? (link.rise ?? 0) : 0;
      const [end, at] = link.from === node ? [link.to, height + rise] : [link.from, height - rise];
      const known = heights.get(end);
      if (known === undefined) heights.set(end, at);
      else if (Math.abs(known - at) > TOLERANCE) issues.push(unevenLoop(link.id, at - known));
    }
  }
  const cutOff = [...touching.keys(), ...spec.loads.map((load) => load.node)].filter(
    (node) => !heights.has(node),
  );
  for (const where of new Set(cutOff)) issues.push({ code: 'ill-formed', where, reason: 'cut-off' });
  return issues.length > 0 ? fail(...dedupe(issues)) : ok(heights);
}

function unevenLoop(id: string, found: number): Issue {
  return { code: 'contradiction', where: `${id}.rise`, found, kind: 'length', reason: 'loop-does-not-close' };
}

/** A link is met from both its ends; one issue is enough. */
function dedupe(issues: readonly Issue[]): Issue[] {
  return issues.filter((issue, i) => issues.findIndex((other) => other.where === issue.where) === i);
}

function linksByNode(links: readonly GasLink[]): Map<string, GasLink[]> {
  const touching = new Map<string, GasLink[]>();
  const add = (node: string, link: GasLink): void => {
    const known = touching.get(node);
    if (known === undefined) touching.set(node, [link]);
    else known.push(link);
  };
  for (const link of links) {
    add(link.from, link);
    add(link.to, link);
  }
  return touching;
}
