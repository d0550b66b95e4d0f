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
  const met = [spec.supply.node];
  const issues: Issue[] = [];
  const touching = linksByNode(spec.links);
  for (const node of met) {
    const height = heights.get(node) ?? 0;
    for (const link of touching.get(node) ?? NO_LINKS) {
      const along = link.from === node;
      const end = along ? link.to : link.from;
      const rise = link.type === 'pipe' ? (link.rise ?? 0) : 0;
      const at = along ? height + rise : height - rise;
      const known = heights.get(end);
      if (known === undefined) {
        heights.set(end, at);
        met.push(end);
      } else if (Math.abs(known - at) > TOLERANCE) issues.push(unevenLoop(link.id, at - known));
    }
  }
  for (const where of cutOff(spec, heights)) issues.push({ code: 'ill-formed', where, reason: 'cut-off' });
  return issues.length > 0 ? fail(...dedupe(issues)) : ok(heights);
}

const NO_LINKS: readonly GasLink[] = [];

/** Junctions that the supply does not reach, those of links first. */
function cutOff({ links, loads }: GasSystemSpec, heights: ReadonlyMap<string, number>): ReadonlySet<string> {
  const apart = new Set<string>();
  for (const { from, to } of links) {
    if (!heights.has(from)) apart.add(from);
    if (!heights.has(to)) apart.add(to);
  }
  for (const { node } of loads) if (!heights.has(node)) apart.add(node);
  return apart;
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
