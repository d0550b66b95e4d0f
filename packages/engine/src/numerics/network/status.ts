/**
 * What one-way links and regulators do after a step: hold back, let through, or take charge.
 *
 * A blocked link is not cut out of the equations: it keeps a trickle (its loss rises by `backSlope` per m3/s of
 * reverse flow, a thousand billion times steeper than the network at large), so that the part behind it keeps a
 * potential of its own. The trickle is not reported as flow. A link that is let through starts from no flow: its
 * tangent there joins both ends, and the next step finds the flow that the rest of the network can drive.
 */
import { lineAt } from './evaluate.ts';
import { BLOCKED, HOLDING, type LinkTable, OPEN, REGULATOR, SHUT, STRIDE } from './link-table.ts';
import type { NetworkState } from './state.ts';

/** What is too small to matter: flow, potential, and slope of a law. */
export interface Margins {
  readonly flow: number;
  readonly potential: number;
  readonly slope: number;
}

/** Brings every link that may be other than open into the state it belongs in; how many changed. */
export function settleStates(net: NetworkState, margins: Margins): number {
  const { special, specialCount, state } = net.links;
  let changed = 0;
  for (let k = 0; k < specialCount; k += 1) {
    const i = special[k]!;
    if (state[i] !== SHUT && settle(net, i, margins)) changed += 1;
  }
  return changed;
}

function settle(net: NetworkState, i: number, margins: Margins): boolean {
  const { state, code, q } = net.links;
  const before = state[i]!;
  const regulator = code[i] === REGULATOR;
  const after = regulator ? regulatorState(net, i, margins) : checkState(net, i, margins);
  if (after === before) return false;
  state[i] = after;
  if (before === BLOCKED || after === BLOCKED) q[i] = 0;
  if (regulator) net.attach(i);
  return true;
}

function checkState({ links, potential, from, to }: NetworkState, i: number, margins: Margins): number {
  if (links.state[i] === OPEN) return links.q[i]! < -margins.flow ? BLOCKED : OPEN;
  const drop = potential[from[i]!]! - potential[to[i]!]!;
  return drop > links.lossAtRest[i]! + margins.potential ? OPEN : BLOCKED;
}

function regulatorState({ links, potential, from, to }: NetworkState, i: number, margins: Margins): number {
  const q = links.q[i]!;
  const inlet = potential[from[i]!]!;
  const outlet = potential[to[i]!]!;
  const margin = margins.potential;
  if (links.state[i] === BLOCKED) {
    const atRest = heldPotential(links, i, 0);
    if (outlet >= atRest - margin || inlet <= outlet + margin) return BLOCKED;
    return inlet > atRest ? HOLDING : OPEN;
  }
  if (q < -margins.flow) return BLOCKED;
  const held = heldPotential(links, i, q);
  if (links.state[i] === OPEN) return outlet > held + margin ? HOLDING : OPEN;
  return inlet - links.parameters[i * STRIDE]! * q * q < held - margin ? OPEN : HOLDING;
}

/** Outlet potential that a regulator holds at a flow. */
function heldPotential(links: LinkTable, i: number, q: number): number {
  const points = links.points[i]!;
  const at = lineAt(points, q);
  return -(points[at + 1]! + points[at + 2]! * (q - points[at]!));
}
