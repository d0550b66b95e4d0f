/**
 * Shortens a step that went too far.
 *
 * The flows that solve a network are those of least content, Σ∫h(q)dq, among all that keep continuity (convex,
 * because no loss falls with flow). Along a step that keeps continuity the derivative of the content is
 * Σ (h(q) − Hfrom + Hto)·step, which never falls; its zero is found by halving and false position. With it every
 * step lessens the content, so that kinks of curves and valves cannot make the iteration run in circles.
 *
 * Source: Collins et al., Solving the pipe network analysis problem using optimization techniques, Management
 * Science 24 (1978) (from memory).
 */
import { HOLDING, SHUT } from './link-table.ts';
import type { NetworkState } from './state.ts';
import type { Margins } from './status.ts';
import { resweep, sweep } from './sweep.ts';

/** Part of the first derivative that may be left. */
const ENOUGH = 0.1;
const MOST_TRIALS = 40;

/** Sweeps with the last change of potentials, and moves the flows back to where the content is least. */
export function dampedSweep(net: NetworkState, margins: Margins): void {
  const before = stepStrength(net);
  sweep(net, margins);
  net.direction.set(net.links.step);
  const { changed, moved } = net.measures;
  let [low, high, at] = [0, 1, 1];
  let derivative = contentDerivative(net);
  let [atLow, atHigh] = [-before, derivative];
  if (!(derivative > ENOUGH * before)) return;
  for (let trial = 0; trial < MOST_TRIALS && Math.abs(derivative) > ENOUGH * before; trial += 1) {
    const falsePosition = low + (high - low) * (atLow / (atLow - atHigh));
    const next = trial % 2 === 0 ? falsePosition : (low + high) / 2;
    moveAlong(net, next - at, margins);
    at = next;
    derivative = contentDerivative(net);
    if (derivative > 0) [high, atHigh] = [at, derivative];
    else [low, atLow] = [at, derivative];
  }
  net.measures.changed = Math.max(changed, net.measures.changed);
  net.measures.moved = moved * at;
}

/** Σ p·(Hfrom − Hto − h)², with the tangents before the step: minus the derivative of the content at its start. */
function stepStrength({ links, predicted, conductance, change, tailRow, headRow }: NetworkState): number {
  let sum = 0;
  for (let i = 0; i < links.count; i += 1) {
    if (links.state[i] === SHUT || links.state[i] === HOLDING) continue;
    const rise = change[tailRow[i]!]! - change[headRow[i]!]!;
    const step = predicted[i]! + conductance[i]! * rise - links.q[i]!;
    sum += step ** 2 / conductance[i]!;
  }
  return sum;
}

function contentDerivative({ links, potential, direction, tail, head }: NetworkState): number {
  let sum = 0;
  for (let i = 0; i < links.count; i += 1) {
    if (links.state[i] === SHUT || links.state[i] === HOLDING) continue;
    const drop = potential[tail[i]!]! - potential[head[i]!]!;
    sum += (links.loss[i]! - drop) * direction[i]!;
  }
  return sum;
}

function moveAlong(net: NetworkState, by: number, margins: Margins): void {
  const { links, direction } = net;
  for (let i = 0; i < links.count; i += 1) links.q[i]! += by * direction[i]!;
  resweep(net, margins);
}
