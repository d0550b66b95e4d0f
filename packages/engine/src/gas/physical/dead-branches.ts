/**
 * Branches that carry nothing in a case: twigs that end at no running load. They are left out of the network, where a
 * square law without flow has no slope to solve with, and get their pressure from where they hang on, as at rest.
 *
 * Links of loops are kept, unless nothing at all is drawn: their flow is not known to be nothing.
 */
import type { RestLink } from './at-rest.ts';

/** 1 for every link that may carry gas, given the links and what is drawn at each junction (standard m3/s). */
export function carryingLinks(links: readonly RestLink[], demand: Float64Array, supply: number): Uint8Array {
  if (demand.every((flow) => flow === 0)) return new Uint8Array(links.length);
  const carrying = Uint8Array.from(links, (link) => (link.closed ? 0 : 1));
  const ways = new Uint16Array(demand.length);
  links.forEach(({ from, to }, i) => {
    if (carrying[i] === 0) return;
    ways[from]! += 1;
    ways[to]! += 1;
  });
  const idle = (node: number): boolean => ways[node] === 1 && demand[node] === 0 && node !== supply;
  // Each pass takes off one twig or more of each dead branch; a branch has no more of them than there are links.
  for (let pass = 0, stripped = true; stripped && pass < links.length; pass += 1) {
    stripped = false;
    links.forEach(({ from, to }, i) => {
      if (carrying[i] === 0 || !(idle(from) || idle(to))) return;
      carrying[i] = 0;
      ways[from]! -= 1;
      ways[to]! -= 1;
      stripped = true;
    });
  }
  return carrying;
}
