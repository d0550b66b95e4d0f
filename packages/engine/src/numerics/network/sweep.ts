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
export function movePotentials(net: NetworkState): void {
  const { system, surplus, change, potential, row, nodeCount } = net;
  const rows = system.structure.size;
  for (let r = 0; r < rows; r += 1) change[r] = surplus[r]!;
  system.solve(change);
  change[rows] = 0;
  for (let n = 0; n < nodeCount; n += 1) potential[n]! += change[row[n]!]!;
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
  clear(net);
  fill(net);
  supplyRegulators(net);
}

function moveFlows({
  links,
  tailRow,
  headRow,
  change,
  predicted,
  conductance,
  measures,
}: NetworkState): void {
  const { q, step, count } = links;
  let total = 0;
  let moved = 0;
  for (let i = 0; i < count; i += 1) {
    const flow = predicted[i]! + conductance[i]! * (change[tailRow[i]!]! - change[headRow[i]!]!);
    const by = flow - q[i]!;
    step[i] = by;
    q[i] = flow;
    moved += Math.abs(by);
    total += Math.abs(flow);
  }
  measures.total = total;
  measures.moved = moved;
}

function clear({ system, surplus, row, demand, nodeCount }: NetworkState): void {
  system.clear();
  for (let n = 0; n < nodeCount; n += 1) surplus[row[n]!] = -demand[n]!;
}

function fill(net: NetworkState): void {
  const { links, tail, head, tailRow, headRow, entry, surplus, predicted, conductance, potential } = net;
  const { diagonal, off } = net.system;
  const { q, loss, slope, count } = links;
  let ahead = 0;
  let worst = 0;
  let greatest = 0;
  for (let i = 0; i < count; i += 1) {
    const p = 1 / slope[i]!;
    const drop = loss[i]!;
    const miss = potential[tail[i]!]! - potential[head[i]!]! - drop;
    const by = p * miss;
    const next = q[i]! + by;
    const a = tailRow[i]!;
    const b = headRow[i]!;
    predicted[i] = next;
    conductance[i] = p;
    surplus[a]! -= next;
    surplus[b]! += next;
    diagonal[a]! += p;
    diagonal[b]! += p;
    off[entry[i]!]! -= p;
    ahead += Math.abs(by);
    if (Math.abs(miss) > worst) worst = Math.abs(miss);
    if (Math.abs(drop) > greatest) greatest = Math.abs(drop);
  }
  net.measures.ahead = ahead;
  net.measures.worst = worst;
  net.measures.greatest = greatest;
}

/**
 * Puts the tangent of one open link, whose law changed, in the place of its old one in the next system, which the
 * last sweep filled: a valve is turned without a look at the other links.
 */
export function retangent(net: NetworkState, i: number): void {
  const { links, surplus, predicted, conductance, potential, system } = net;
  evaluateOpen(links, i);
  const a = net.tailRow[i]!;
  const b = net.headRow[i]!;
  const p = 1 / links.slope[i]!;
  const next = links.q[i]! + p * (potential[net.tail[i]!]! - potential[net.head[i]!]! - links.loss[i]!);
  const more = p - conductance[i]!;
  surplus[a]! -= next - predicted[i]!;
  surplus[b]! += next - predicted[i]!;
  system.diagonal[a]! += more;
  system.diagonal[b]! += more;
  system.off[net.entry[i]!]! -= more;
  predicted[i] = next;
  conductance[i] = p;
}

/** What regulators in charge draw from their inlets: the present flow, since their tangents hang from the ground. */
function supplyRegulators({ links, row, from, surplus }: NetworkState): void {
  for (let k = 0; k < links.specialCount; k += 1) {
    const i = links.special[k]!;
    if (links.state[i] === HOLDING) surplus[row[from[i]!]!]! -= links.q[i]!;
  }
}

/** Greatest |inflow − outflow − demand| of a free node over the greatest flow. */
export function continuityError(net: NetworkState, least: number): number {
  const { links, row, from, to, demand, nodeCount, system } = net;
  // The last change of potentials has been used up: its array serves for the balance.
  const balance = net.change;
  for (let n = 0; n < nodeCount; n += 1) balance[row[n]!] = -demand[n]!;
  let greatest = least;
  for (let i = 0; i < links.count; i += 1) {
    const flow = links.q[i]!;
    balance[row[from[i]!]!]! -= flow;
    balance[row[to[i]!]!]! += flow;
    if (Math.abs(flow) > greatest) greatest = Math.abs(flow);
  }
  let worst = 0;
  const rows = system.structure.size;
  for (let r = 0; r < rows; r += 1) if (Math.abs(balance[r]!) > worst) worst = Math.abs(balance[r]!);
  return worst / greatest;
}
