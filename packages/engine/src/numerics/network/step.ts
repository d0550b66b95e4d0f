/**
 * One step of the global gradient method: the linear system of all links at once, each replaced by its tangent,
 * solved for the change of every free potential.
 *
 *     q' = q + (Hfrom − Hto − h(q))/h'(q)         flow predicted with the old potentials
 *     Σ p·(δ of this node − δ of the other) = Σin q' − Σout q' − demand,   p = 1/h'(q)
 *     q" = q' + p·(δfrom − δto)
 *
 * Continuity then holds to rounding, whatever the flows were before. Solving for the change of potential rather
 * than for the potential keeps digits where potentials are large and their differences small.
 *
 * Source: Todini and Pilati, A gradient algorithm for the analysis of pipe networks, 1988 (from memory).
 */
import { HOLDING } from './link-table.ts';
import type { NetworkState } from './state.ts';

/** Assembles, factorises, solves and moves potentials and flows. */
export function gradientStep(net: NetworkState): void {
  assemble(net);
  net.factor.factorise();
  net.factor.solve(net.change);
  net.change[net.factor.structure.size] = 0;
  movePotentials(net);
  moveFlows(net);
}

function assemble(net: NetworkState): void {
  const { links, fromRow, toRow, entry, change, predicted, conductance, potential } = net;
  const { diagonal, off } = net.factor;
  const { q, loss, slope, from, to, state, count } = links;
  diagonal.fill(0);
  off.fill(0);
  startFromDemand(net);
  for (let i = 0; i < count; i += 1) {
    const a = fromRow[i]!;
    const b = toRow[i]!;
    const p = 1 / slope[i]!;
    conductance[i] = p;
    if (state[i] === HOLDING) {
      // A regulator in charge ties its outlet to the held value alone; its inlet only sees the flow.
      const held = q[i]! - p * (potential[to[i]!]! + loss[i]!);
      predicted[i] = held;
      change[a]! -= q[i]!;
      change[b]! += held;
      diagonal[b]! += p;
      continue;
    }
    const flow = q[i]! + p * (potential[from[i]!]! - potential[to[i]!]! - loss[i]!);
    predicted[i] = flow;
    change[a]! -= flow;
    change[b]! += flow;
    diagonal[a]! += p;
    diagonal[b]! += p;
    off[entry[i]!]! -= p;
  }
}

function startFromDemand(net: NetworkState): void {
  const { change, row, demand, nodeCount } = net;
  for (let n = 0; n < nodeCount; n += 1) change[row[n]!] = -demand[n]!;
}

function movePotentials(net: NetworkState): void {
  const { potential, change, row, nodeCount } = net;
  for (let n = 0; n < nodeCount; n += 1) potential[n]! += change[row[n]!]!;
}

function moveFlows(net: NetworkState): void {
  const { links, fromRow, toRow, change, predicted, conductance } = net;
  const { q, step, state, count } = links;
  for (let i = 0; i < count; i += 1) {
    const upstream = state[i] === HOLDING ? 0 : change[fromRow[i]!]!;
    const flow = predicted[i]! + conductance[i]! * (upstream - change[toRow[i]!]!);
    step[i] = flow - q[i]!;
    q[i] = flow;
  }
}
