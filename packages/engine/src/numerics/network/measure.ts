/** How far the present flows and potentials are from a solution. */
import { BLOCKED, HOLDING, SHUT } from './link-table.ts';
import type { NetworkState } from './state.ts';

/** Sum of the changes of flow in the last step, over the sum of flows. */
export function flowChange(net: NetworkState, least: number): number {
  const { q, step, count } = net.links;
  let moved = 0;
  let total = least;
  for (let i = 0; i < count; i += 1) {
    moved += Math.abs(step[i]!);
    total += Math.abs(q[i]!);
  }
  return moved / total;
}

/** Greatest |Hfrom − Hto − h(q)| over the greatest loss or lift of any link. */
export function headError(net: NetworkState, least: number): number {
  const { loss, from, to, state, count } = net.links;
  const { potential } = net;
  let worst = 0;
  let greatest = least;
  for (let i = 0; i < count; i += 1) {
    const doing = state[i]!;
    if (doing === SHUT) continue;
    const upstream = doing === HOLDING ? 0 : potential[from[i]!]!;
    worst = Math.max(worst, Math.abs(upstream - potential[to[i]!]! - loss[i]!));
    if (doing !== BLOCKED && doing !== HOLDING) greatest = Math.max(greatest, Math.abs(loss[i]!));
  }
  return worst / greatest;
}

/** Greatest |inflow − outflow − demand| of a free node over the greatest flow. Uses `change` as its scratch. */
export function continuityError(net: NetworkState, least: number): number {
  const { links, fromRow, toRow, change, row, demand, nodeCount } = net;
  for (let n = 0; n < nodeCount; n += 1) change[row[n]!] = -demand[n]!;
  let greatest = least;
  for (let i = 0; i < links.count; i += 1) {
    const flow = links.q[i]!;
    change[fromRow[i]!]! -= flow;
    change[toRow[i]!]! += flow;
    greatest = Math.max(greatest, Math.abs(flow));
  }
  let worst = 0;
  const rows = net.factor.structure.size;
  for (let r = 0; r < rows; r += 1) worst = Math.max(worst, Math.abs(change[r]!));
  return worst / greatest;
}
