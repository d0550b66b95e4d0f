/**
 * Gas that does not flow: pressures follow from the lock-up of the regulators alone, and nothing has to be solved
 * for. Pipes and meters pass a potential on; a regulator passes on its lock-up, or its inlet where that is lower;
 * where several feed a junction the highest holds, the others being locked up.
 *
 * Worked example: street 30 psi, regulator locking up at 9 in w.c. → 9 in w.c. at every burner (at one height).
 */
import type { LinkState } from '../../numerics/index.ts';

export interface RestLink {
  /** Junctions at its ends. */
  readonly from: number;
  readonly to: number;
  readonly closed: boolean;
  /** Potential that a regulator locks up at; absent for what gas passes freely. */
  readonly lockUp?: number;
}

/**
 * Fills in the potentials that are NaN from those that are known, through the links that carry nothing; what no open
 * link leads to stays NaN.
 */
export function fillAtRest(potentials: Float64Array, links: readonly RestLink[], carrying: Uint8Array): void {
  const known = new Uint8Array(potentials.length);
  for (let node = 0; node < known.length; node += 1) known[node] = Number.isNaN(potentials[node]) ? 0 : 1;
  const raise = (node: number, potential: number): boolean => {
    if (known[node] === 1 || Number.isNaN(potential) || potential <= potentials[node]!) return false;
    potentials[node] = potential;
    return true;
  };
  // Each pass carries a potential one link further; a junction is not more links away than there are links.
  for (let pass = 0, changed = true; changed && pass <= links.length; pass += 1) {
    changed = false;
    for (let i = 0; i < links.length; i += 1) {
      const { from, to, closed, lockUp = Number.POSITIVE_INFINITY } = links[i]!;
      if (closed || carrying[i] === 1) continue;
      if (raise(to, Math.min(potentials[from]!, lockUp))) changed = true;
      if (lockUp === Number.POSITIVE_INFINITY && raise(from, potentials[to]!)) changed = true;
    }
  }
}

/** What a link without flow is doing. */
export function restState({ from, closed, lockUp }: RestLink, potentials: Float64Array): LinkState {
  if (closed) return 'shut';
  if (lockUp === undefined) return 'open';
  return potentials[from]! < lockUp ? 'open' : 'holding';
}
