/**
 * Shortens a step that went too far.
 *
 * The flows that solve a network are those of least content, Σ∫h(q)dq, among all that keep continuity (its law
 * of motion is convex because no loss falls with flow). Along a step that keeps continuity the derivative of the
 * content is Σ (h(q) − Hfrom + Hto)·step, which never falls; its zero is found by halving and false position. With
 * it every step lessens the content, so that kinks of curves and valves cannot make the iteration run in circles.
 *
 * Source: Cherry 1951; Collins et al., Solving the pipe network analysis problem using optimization techniques,
 * Management Science 24 (1978) (from memory).
 */
import { evaluateLinks } from './evaluate.ts';
import { HOLDING, SHUT } from './link-table.ts';
import type { NetworkState } from './state.ts';
import { followFlow } from './status.ts';

/** Part of the first derivative that may be left. */
const ENOUGH = 0.1;
const MOST_TRIALS = 40;

/** Moves the flows back along the last step to where the content is least; `before` is Σ slope·step² at its start. */
export function shortenStep(net: NetworkState, before: number, floor: number): void {
  let low = 0;
  let high = 1;
  let at = 1;
  let derivative = contentDerivative(net);
  if (derivative <= ENOUGH * before) return;
  let atLow = -before;
  let atHigh = derivative;
  for (let trial = 0; trial < MOST_TRIALS && Math.abs(derivative) > ENOUGH * before; trial += 1) {
    const falsePosition = low + (high - low) * (atLow / (atLow - atHigh));
    const next = trial % 2 === 0 ? falsePosition : (low + high) / 2;
    moveAlong(net, next - at, floor);
    at = next;
    derivative = contentDerivative(net);
    if (derivative > 0) [high, atHigh] = [at, derivative];
    else [low, atLow] = [at, derivative];
  }
}

/** Σ slope·step² with the slopes before the step: minus the derivative of the content where the step began. */
export function stepStrength(net: NetworkState): number {
  const { step, state, count } = net.links;
  let sum = 0;
  for (let i = 0; i < count; i += 1)
    if (state[i] !== SHUT && state[i] !== HOLDING) sum += step[i]! ** 2 / net.conductance[i]!;
  return sum;
}

function contentDerivative(net: NetworkState): number {
  const { loss, step, from, to, state, count } = net.links;
  const { potential } = net;
  let sum = 0;
  for (let i = 0; i < count; i += 1)
    if (state[i] !== SHUT && state[i] !== HOLDING)
      sum += (loss[i]! - potential[from[i]!]! + potential[to[i]!]!) * step[i]!;
  return sum;
}

function moveAlong(net: NetworkState, by: number, floor: number): void {
  const { q, step, count } = net.links;
  for (let i = 0; i < count; i += 1) q[i]! += by * step[i]!;
  followFlow(net.links);
  evaluateLinks(net.links, floor);
}
