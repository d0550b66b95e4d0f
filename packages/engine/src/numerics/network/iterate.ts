/**
 * The iteration: gradient steps with status checks, and, if these have not settled, damped steps whose every one
 * lessens the content of the network.
 *
 * Converged means: no link changed its state; no link misses its law by more than `headTolerance` of the greatest
 * loss (or by the last digits of the potentials); the flows changed by less than `flowTolerance` of their sum, or
 * would do so next; and every node balances within ten times that part of the greatest flow. Bounded by
 * `maxIterations`.
 */
import { dampedSweep } from './damped.ts';
import type { Scale } from './scale.ts';
import type { NetworkState } from './state.ts';
import { continuityError, movePotentials, sweep } from './sweep.ts';

export interface Settings {
  readonly flowTolerance: number;
  readonly headTolerance: number;
  readonly maxIterations: number;
}

export const DEFAULT_SETTINGS: Settings = { flowTolerance: 1e-8, headTolerance: 1e-8, maxIterations: 150 };

/** Steps after which plain iteration is taken to run in circles. */
const PLAIN_STEPS = 25;
/**
 * Where losses are met to rounding, flows that still creep (round a loop without resistance to speak of) are taken
 * as they are: no potential could tell them apart.
 */
const ROUNDING = 1e-13;
const BARELY_MOVED = 1e-5;
/** Rounding may leave this imbalance at a node, whatever tolerance was asked for. */
const LEAST_IMBALANCE = 1e-9;

export interface Outcome {
  converged: boolean;
  iterations: number;
  residual: number;
}

/** Iterates from the present flows, whose system is filled; writes how it went into `outcome`. */
export function iterate(net: NetworkState, scale: Scale, settings: Settings, outcome: Outcome): void {
  outcome.converged = false;
  let balance = Number.POSITIVE_INFINITY;
  let iteration = 0;
  while (!outcome.converged && iteration < settings.maxIterations) {
    iteration += 1;
    movePotentials(net);
    if (iteration > PLAIN_STEPS) dampedSweep(net, scale);
    else sweep(net, scale);
    if (!Number.isFinite(net.measures.total)) break;
    if (!seemsConverged(net, scale, settings)) continue;
    balance = continuityError(net, scale.leastFlow);
    outcome.converged = balance <= Math.max(LEAST_IMBALANCE, 10 * settings.flowTolerance);
  }
  outcome.iterations = iteration;
  const { worst, greatest } = net.measures;
  const miss = Math.max(0, worst - scale.grain) / (greatest + scale.leastLoss);
  outcome.residual = Math.max(miss, outcome.converged ? balance : continuityError(net, scale.leastFlow));
}

function seemsConverged({ measures: found }: NetworkState, scale: Scale, settings: Settings): boolean {
  const flows = found.total + scale.leastFlow;
  const losses = found.greatest + scale.leastLoss;
  const still = Math.min(found.moved, found.ahead) <= settings.flowTolerance * flows;
  const met = still && found.worst <= settings.headTolerance * losses + scale.grain;
  const exhausted =
    found.worst <= ROUNDING * losses + scale.grain && found.moved <= BARELY_MOVED * (flows + scale.flow);
  return found.changed === 0 && (met || exhausted);
}
