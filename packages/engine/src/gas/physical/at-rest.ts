/**
 * A gas system in which nothing flows: pressures follow from the lock-up of the regulators alone, and nothing has to
 * be solved for. Pipes and meters pass a potential on; a regulator passes on its lock-up, or its inlet where that is
 * lower; where several feed a junction the highest holds, the others being locked up.
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

export interface RestState {
  /** Potential of every junction; NaN where no open link leads. */
  readonly potentials: Float64Array;
  readonly states: readonly LinkState[];
}

/** Potentials at rest, from the supply's. */
export function atRest(
  count: number,
  supply: { readonly node: number; readonly potential: number },
  links: readonly RestLink[],
): RestState {
  const potentials = new Float64Array(count).fill(Number.NaN);
  potentials[supply.node] = supply.potential;
  // Each pass carries a potential one link further; a junction is not more links away than there are links.
  for (let pass = 0, changed = true; changed && pass <= links.length; pass += 1) {
    changed = false;
    for (const { from, to, closed, lockUp } of links) {
      if (closed) continue;
      if (raise(potentials, to, Math.min(potentials[from]!, lockUp ?? Number.POSITIVE_INFINITY)))
        changed = true;
      if (lockUp === undefined && raise(potentials, from, potentials[to]!)) changed = true;
    }
  }
  return { potentials, states: links.map((link) => restState(link, potentials)) };
}

function raise(potentials: Float64Array, node: number, potential: number): boolean {
  if (Number.isNaN(potential) || potential <= potentials[node]!) return false;
  potentials[node] = potential;
  return true;
}

function restState({ from, closed, lockUp }: RestLink, potentials: Float64Array): LinkState {
  if (closed) return 'shut';
  if (lockUp === undefined) return 'open';
  return potentials[from]! < lockUp ? 'open' : 'holding';
}
