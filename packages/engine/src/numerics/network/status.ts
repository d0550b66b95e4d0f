/**
 * What one-way links and regulators do after a step: hold back, let through, or take charge.
 *
 * A blocked link is not cut out of the equations: it keeps a trickle (its loss rises by `backSlope` per m3/s of
 * reverse flow, a thousand billion times steeper than the network at large), so that the part behind it keeps a
 * potential of its own. The trickle is not reported as flow.
 */
import { BLOCKED, HOLDING, type LinkTable, OPEN, REGULATOR, SHUT, STRIDE } from './link-table.ts';
import type { Scale } from './scale.ts';
import type { NetworkState } from './state.ts';

/** Smallest flow and difference of potential that count as a reason to change, parts of the scale. */
const FLOW_MARGIN = 1e-9;
const POTENTIAL_MARGIN = 1e-9;

/**
 * Brings every one-way link and regulator into the state its flow and potentials ask for; how many changed. With
 * `regulatorsOnly` the others are left to `followFlow`.
 */
export function updateStatus(net: NetworkState, scale: Scale, regulatorsOnly = false): number {
  const { links } = net;
  let changed = 0;
  for (let i = 0; i < links.count; i += 1) {
    if (links.oneWay[i] === 0 || links.state[i] === SHUT) continue;
    if (regulatorsOnly && links.code[i] !== REGULATOR) continue;
    const before = links.state[i]!;
    const after = links.code[i] === REGULATOR ? regulatorState(net, i, scale) : checkState(net, i, scale);
    if (after === before) continue;
    changed += 1;
    links.state[i] = after;
    if (after === BLOCKED) links.q[i] = 0;
    else if (before === BLOCKED) links.q[i] = 0;
  }
  return changed;
}

/** One-way links take the branch that their flow stands on: for the damped search, which moves in small steps. */
export function followFlow(links: LinkTable): void {
  for (let i = 0; i < links.count; i += 1) {
    if (links.oneWay[i] === 0 || links.state[i] === SHUT || links.code[i] === REGULATOR) continue;
    links.state[i] = links.q[i]! < 0 ? BLOCKED : OPEN;
  }
}

function checkState({ links, potential }: NetworkState, i: number, scale: Scale): number {
  if (links.state[i] === OPEN) return links.q[i]! < -FLOW_MARGIN * scale.flow ? BLOCKED : OPEN;
  const drop = potential[links.from[i]!]! - potential[links.to[i]!]!;
  return drop > links.lossAtRest[i]! + POTENTIAL_MARGIN * scale.potential ? OPEN : BLOCKED;
}

function regulatorState({ links, potential }: NetworkState, i: number, scale: Scale): number {
  const q = links.q[i]!;
  const inlet = potential[links.from[i]!]!;
  const outlet = potential[links.to[i]!]!;
  const margin = POTENTIAL_MARGIN * scale.potential;
  if (links.state[i] === BLOCKED) {
    const atRest = heldPotential(links, i, 0);
    if (outlet >= atRest - margin || inlet <= outlet + margin) return BLOCKED;
    return inlet > atRest ? HOLDING : OPEN;
  }
  if (q < -FLOW_MARGIN * scale.flow) return BLOCKED;
  const held = heldPotential(links, i, q);
  if (links.state[i] === OPEN) return outlet > held + margin ? HOLDING : OPEN;
  return inlet - links.parameters[i * STRIDE]! * q * q < held - margin ? OPEN : HOLDING;
}

/** Outlet potential that a regulator holds at a flow. */
function heldPotential(links: LinkTable, i: number, q: number): number {
  const points = links.points[i]!;
  let k = 0;
  while (k < points.length - 4 && q > points[k + 2]!) k += 2;
  const slope = (points[k + 3]! - points[k + 1]!) / (points[k + 2]! - points[k]!);
  return -(points[k + 1]! + slope * (q - points[k]!));
}
