/**
 * A step that cannot go too far: for networks in which plain steps run in circles between the kinks of curves and
 * the states of valves.
 *
 * The flows that solve a network are those of least content, Σ∫h(q)dq, among all that keep continuity and run no
 * one-way link backwards (convex, because no loss falls with flow). A damped step goes along the same direction as a
 * plain one, but no further than to where a one-way link would turn round, and then back to where the content is
 * least: its derivative along the step is Σ (h(q) − Hfrom + Hto)·step, which never falls as the step grows. A link
 * at the end of its way is blocked; blocked ones are let through again only after a whole step. So every step lessens
 * the content, and no set of blocked links comes twice.
 *
 * Source: Collins et al., Solving the pipe network analysis problem using optimization techniques, Management
 * Science 24 (1978); active sets: Fletcher, Practical Methods of Optimization, 1987, chapter 10 (both from memory).
 */
import { BLOCKED, HOLDING, OPEN, REGULATOR, SHUT } from './link-table.ts';
import type { Scale } from './scale.ts';
import type { NetworkState } from './state.ts';
import { settleStates } from './status.ts';
import { refill } from './sweep.ts';

/** Part of the first derivative that may be left. */
const ENOUGH = 0.1;
const MOST_TRIALS = 60;

/** Moves flows with the last change of potentials as far as is good, and fills the next system. */
export function dampedSweep(net: NetworkState, scale: Scale): void {
  const strength = aim(net);
  const reach = reachOf(net, scale);
  advance(net, reach);
  const part = shorten(net, { strength, reach });
  const { total, moved } = sums(net);
  const blocked = part === reach && reach < 1 ? blockAtEnd(net, scale) : 0;
  const settled = part === 1 ? settleStates(net, scale) : 0;
  if (blocked + settled > 0) refill(net);
  net.measures.total = total;
  net.measures.moved = moved * part;
  net.measures.changed = blocked + settled;
}

/** The direction of the plain step; Σ slope·step² along it, which is minus the derivative of the content here. */
function aim({ links, predicted, conductance, change, tail, head, direction }: NetworkState): number {
  let strength = 0;
  for (let i = 0; i < links.count; i += 1) {
    const rise = change[tail[i]!]! - change[head[i]!]!;
    const step = predicted[i]! + conductance[i]! * rise - links.q[i]!;
    direction[i] = step;
    if (links.state[i] !== SHUT && links.state[i] !== HOLDING) strength += step ** 2 / conductance[i]!;
  }
  return strength;
}

/** How much of the step every open one-way link can take before it turns round. */
function reachOf({ links, direction }: NetworkState, scale: Scale): number {
  let reach = 1;
  for (let k = 0; k < links.specialCount; k += 1) {
    const i = links.special[k]!;
    const q = links.q[i]!;
    if (links.state[i] !== OPEN || links.code[i] === REGULATOR || q + direction[i]! >= -scale.flowMargin)
      continue;
    reach = Math.min(reach, Math.max(0, q) / -direction[i]!);
  }
  return reach;
}

function blockAtEnd({ links, direction }: NetworkState, scale: Scale): number {
  let blocked = 0;
  for (let k = 0; k < links.specialCount; k += 1) {
    const i = links.special[k]!;
    if (links.state[i] !== OPEN || links.code[i] === REGULATOR) continue;
    if (links.q[i]! > scale.flowMargin || direction[i]! >= 0) continue;
    links.state[i] = BLOCKED;
    links.q[i] = 0;
    blocked += 1;
  }
  return blocked;
}

function advance(net: NetworkState, by: number): void {
  const { links, direction } = net;
  for (let i = 0; i < links.count; i += 1) links.q[i]! += by * direction[i]!;
  refill(net);
}

interface Search {
  readonly strength: number;
  readonly reach: number;
}

/**
 * The part of the step that is kept: false position with the weight of an end that stays halved (Illinois), and a
 * plain halving every fourth time.
 */
function shorten(net: NetworkState, { strength, reach }: Search): number {
  let at = reach;
  let derivative = contentDerivative(net);
  if (!(derivative > ENOUGH * strength)) return at;
  let [low, atLow, high, atHigh] = [0, -strength, reach, derivative];
  for (let trial = 1; trial < MOST_TRIALS && Math.abs(derivative) > ENOUGH * strength; trial += 1) {
    const guess = low + (high - low) * (atLow / (atLow - atHigh));
    const next = trial % 4 === 0 ? (low + high) / 2 : guess;
    advance(net, next - at);
    const stayed = derivative > 0;
    at = next;
    derivative = contentDerivative(net);
    if (derivative > 0) {
      [high, atHigh] = [at, derivative];
      if (stayed) atLow /= 2;
    } else {
      [low, atLow] = [at, derivative];
      if (!stayed) atHigh /= 2;
    }
  }
  return at;
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

function sums({ links, direction }: NetworkState): { total: number; moved: number } {
  let total = 0;
  let moved = 0;
  for (let i = 0; i < links.count; i += 1) {
    total += Math.abs(links.q[i]!);
    moved += Math.abs(direction[i]!);
  }
  return { total, moved };
}
