/**
 * The parts of a step of the global gradient method, in which every link is replaced by its tangent and all are
 * solved at once for the change of every free potential.
 *
 *     q' = q + p·(Hfrom − Hto − h(q)),  p = 1/h'(q)      flow predicted with the present potentials
 *     Σ p·(δ of this node − δ of the other) = Σin q' − Σout q' − demand
 *     q" = q' + p·(δfrom − δto)
 *
 * Continuity then holds to rounding, whatever the flows were before. Solving for the change of potential rather
 * than for the potential keeps digits where potentials are large and their differences small.
 *
 * Source: Todini and Pilati, A gradient algorithm for the analysis of pipe networks, 1988 (from memory).
 */
import { evaluateLinks, evaluateOpen } from './evaluate.ts';
import { HOLDING } from './link-table.ts';
import type { Scale } from './scale.ts';
import type { NetworkState } from './state.ts';
import { settleStates } from './status.ts';

/** Solves the system that the last sweep filled, and moves every free potential. */
export function movePotentials({ system, change, potential, rows, nodeCount }: NetworkState): void {
  system.solve(change);
  for (let c = 0; c < rows; c += 1) potential[c]! += change[c]!;
  for (let c = rows; c <= nodeCount; c += 1) change[c] = 0;
}

/** Moves every flow with the potentials, settles states, evaluates every law, measures, fills the next system. */
export function sweep(net: NetworkState, scale: Scale): void {
  moveFlows(net);
  net.measures.changed = settleStates(net, scale);
  refill(net);
}

/** Evaluates every law at the present flows, measures, and fills the next system. */
export function refill(net: NetworkState): void {
  evaluateLinks(net.links);
  net.system.clear();
  fill(net);
  supplyRegulators(net);
}

function moveFlows({ links, tail, head, change, predicted, conductance, measures }: NetworkState): void {
  const { q, count } = links;
  let total = 0;
  let moved = 0;
  for (let i = 0; i < count; i += 1) {
    const flow = predicted[i]! + conductance[i]! * (change[tail[i]!]! - change[head[i]!]!);
    moved += Math.abs(flow - q[i]!);
    q[i] = flow;
    total += Math.abs(flow);
  }
  measures.total = total;
  measures.moved = moved;
}

function fill(net: NetworkState): void {
  const { links, tail, head, entry, change, demand, predicted, conductance, potential, rows, measures } = net;
  const { diagonal, off } = net.system;
  const { q, loss, slope, count } = links;
  let ahead = 0;
  let worst = 0;
  let greatest = 0;
  for (let c = 0; c < rows; c += 1) change[c] = -demand[c]!;
  for (let i = 0; i < count; i += 1) {
    const a = tail[i]!;
    const b = head[i]!;
    const p = 1 / slope[i]!;
    const drop = loss[i]!;
    const miss = potential[a]! - potential[b]! - drop;
    const by = p * miss;
    const next = q[i]! + by;
    predicted[i] = next;
    conductance[i] = p;
    change[a]! -= next;
    change[b]! += next;
    diagonal[a]! += p;
    diagonal[b]! += p;
    off[entry[i]!]! -= p;
    ahead += Math.abs(by);
    if (Math.abs(miss) > worst) worst = Math.abs(miss);
    if (Math.abs(drop) > greatest) greatest = Math.abs(drop);
  }
  measures.ahead = ahead;
  measures.worst = worst;
  measures.greatest = greatest;
}

/**
 * Puts the tangent of one open link, whose law changed, in the place of its old one in the next system, which the
 * last sweep filled: a valve is turned without a look at the other links.
 */
export function retangent(net: NetworkState, i: number): void {
  const { links, change, predicted, conductance, potential, system } = net;
  evaluateOpen(links, i);
  const a = net.tail[i]!;
  const b = net.head[i]!;
  const p = 1 / links.slope[i]!;
  const next = links.q[i]! + p * (potential[a]! - potential[b]! - links.loss[i]!);
  const more = p - conductance[i]!;
  change[a]! -= next - predicted[i]!;
  change[b]! += next - predicted[i]!;
  system.diagonal[a]! += more;
  system.diagonal[b]! += more;
  system.off[net.entry[i]!]! -= more;
  predicted[i] = next;
  conductance[i] = p;
}

/** What regulators in charge draw from their inlets: the present flow, since their tangents hang from the ground. */
function supplyRegulators({ links, cell, from, change }: NetworkState): void {
  for (let k = 0; k < links.specialCount; k += 1) {
    const i = links.special[k]!;
    if (links.state[i] === HOLDING) change[cell[from[i]!]!]! -= links.q[i]!;
  }
}

/** Greatest |inflow − outflow − demand| of a free node over the greatest flow. */
export function continuityError(net: NetworkState, least: number): number {
  const { links, cell, from, to, scratch, demand, rows } = net;
  for (let c = 0; c < rows; c += 1) scratch[c] = -demand[c]!;
  let greatest = least;
  for (let i = 0; i < links.count; i += 1) {
    const flow = links.q[i]!;
    scratch[cell[from[i]!]!]! -= flow;
    scratch[cell[to[i]!]!]! += flow;
    if (Math.abs(flow) > greatest) greatest = Math.abs(flow);
  }
  let worst = 0;
  for (let c = 0; c < rows; c += 1) if (Math.abs(scratch[c]!) > worst) worst = Math.abs(scratch[c]!);
  return worst / greatest;
}
