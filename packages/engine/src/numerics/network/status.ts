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
import type { Scale } from './scale.ts';
import type { NetworkState } from './state.ts';

/** Brings every link that may be other than open into the state it belongs in; how many changed. */
export function settleStates(net: NetworkState, scale: Scale): number {
  const { special, specialCount, state } = net.links;
  let changed = 0;
  for (let k = 0; k < specialCount; k += 1) {
    const i = special[k]!;
    if (state[i] !== SHUT && settle(net, i, scale)) changed += 1;
  }
  return changed;
}

/** Backward flow, part of the flow scale, that a blocked link cannot be said to trickle. */
const STRAIN = 1e-7;

/** A blocked link that is asked to pass flow backwards, because a demand can be met in no other way; −1 if none. */
export function strainedLink({ links }: NetworkState, scale: Scale): number {
  for (let k = 0; k < links.specialCount; k += 1) {
    const i = links.special[k]!;
    if (links.state[i] === BLOCKED && Math.abs(links.q[i]!) > STRAIN * scale.flow) return i;
  }
  return -1;
}

function settle(net: NetworkState, i: number, scale: Scale): boolean {
  const { state, code, q } = net.links;
  const before = state[i]!;
  const regulator = code[i] === REGULATOR;
  const after = regulator ? regulatorState(net, i, scale) : checkState(net, i, scale);
  if (after === before) return false;
  state[i] = after;
  if (before === BLOCKED || after === BLOCKED) q[i] = 0;
  if (regulator) net.attach(i);
  return true;
}

function checkState({ links, potential, cell, from, to }: NetworkState, i: number, scale: Scale): number {
  if (links.state[i] === OPEN) return links.q[i]! < -scale.flowMargin ? BLOCKED : OPEN;
  const drop = potential[cell[from[i]!]!]! - potential[cell[to[i]!]!]!;
  return drop > links.lossAtRest[i]! + scale.potentialMargin ? OPEN : BLOCKED;
}

function regulatorState({ links, potential, cell, from, to }: NetworkState, i: number, scale: Scale): number {
  const q = links.q[i]!;
  const inlet = potential[cell[from[i]!]!]!;
  const outlet = potential[cell[to[i]!]!]!;
  const margin = scale.potentialMargin;
  if (links.state[i] === BLOCKED) {
    const atRest = heldPotential(links, i, 0);
    if (outlet >= atRest - margin || inlet <= outlet + margin) return BLOCKED;
    return inlet > atRest ? HOLDING : OPEN;
  }
  if (q < -scale.flowMargin) return BLOCKED;
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
