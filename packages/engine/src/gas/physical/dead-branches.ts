/**
 * Branches that carry nothing in a case: twigs that end at no running load. They are left out of the network, where a
 * square law without flow has no slope to solve with, and get their pressure from where they hang on, as at rest.
 *
 * Links of loops are kept, unless nothing at all is drawn: their flow is not known to be nothing.
 */
import type { RestLink } from './at-rest.ts';

/** 1 for every link that may carry gas, given the links and what is drawn at each junction (standard m3/s). */
export function carryingLinks(links: readonly RestLink[], demand: Float64Array, supply: number): Uint8Array {
  const carrying = new Uint8Array(links.length);
  if (demand.every((flow) => flow === 0)) return carrying;
  const ways = new Uint16Array(demand.length);
  for (let i = 0; i < links.length; i += 1) {
    const { from, to, closed } = links[i]!;
    if (closed) continue;
    carrying[i] = 1;
    ways[from]! += 1;
    ways[to]! += 1;
  }
  const idle = (node: number): boolean => ways[node] === 1 && demand[node] === 0 && node !== supply;
  // Each pass takes off one twig or more of each dead branch; a branch has no more of them than there are links.
  for (let pass = 0, stripped = true; stripped && pass < links.length; pass += 1) {
    stripped = false;
    // Twigs stand behind the links that feed them as a rule, so that one pass from the end takes most.
    for (let i = links.length - 1; i >= 0; i -= 1) {
      const { from, to } = links[i]!;
      if (carrying[i] === 0 || !(idle(from) || idle(to))) continue;
      carrying[i] = 0;
      ways[from]! -= 1;
      ways[to]! -= 1;
      stripped = true;
    }
  }
  return carrying;
}
