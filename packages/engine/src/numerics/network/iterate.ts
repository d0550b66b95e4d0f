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
import type { Margins } from './status.ts';
import { continuityError, movePotentials, refill, sweep } from './sweep.ts';

export interface Settings {
  readonly flowTolerance: number;
  readonly headTolerance: number;
  readonly maxIterations: number;
}

export const DEFAULT_SETTINGS: Settings = { flowTolerance: 1e-8, headTolerance: 1e-8, maxIterations: 150 };

/** Steps after which plain iteration is taken to run in circles. */
const PLAIN_STEPS = 25;
/** Flows and losses below these parts of the scale are nothing. */
const LEAST = 1e-6;
/** Parts of the scale that are no reason for a link to change its state, and the least slope of a law. */
const MARGIN = 1e-9;
/**
 * Where losses are met to rounding, flows that still creep (round a loop without resistance to speak of) are taken
 * as they are: no potential could tell them apart.
 */
const ROUNDING = 1e-13;
const BARELY_MOVED = 1e-5;
/** Potentials are no finer than this part of the greatest. */
const GRAIN = 16 * Number.EPSILON;
/** Rounding may leave this imbalance at a node, whatever tolerance was asked for. */
const LEAST_IMBALANCE = 1e-9;

export interface Outcome {
  converged: boolean;
  iterations: number;
  residual: number;
}

/** Iterates from the present flows; writes how it went into `outcome`. */
export function iterate(net: NetworkState, scale: Scale, settings: Settings, outcome: Outcome): void {
  const margins: Margins = {
    flow: MARGIN * scale.flow,
    potential: MARGIN * scale.potential,
    slope: (MARGIN * scale.potential) / scale.flow,
  };
  outcome.converged = false;
  refill(net, margins);
  let balance = Number.POSITIVE_INFINITY;
  let iteration = 0;
  while (!outcome.converged && iteration < settings.maxIterations) {
    iteration += 1;
    movePotentials(net);
    if (iteration > PLAIN_STEPS) dampedSweep(net, margins);
    else sweep(net, margins);
    if (!Number.isFinite(net.measures.total)) break;
    if (!seemsConverged(net, scale, settings)) continue;
    balance = continuityError(net, LEAST * scale.flow);
    outcome.converged = balance <= Math.max(LEAST_IMBALANCE, 10 * settings.flowTolerance);
  }
  outcome.iterations = iteration;
  const { worst, greatest } = net.measures;
  const miss = worst / (greatest + LEAST * scale.potential);
  outcome.residual = Math.max(miss, outcome.converged ? balance : continuityError(net, LEAST * scale.flow));
}

function seemsConverged({ measures: found }: NetworkState, scale: Scale, settings: Settings): boolean {
  const flows = found.total + LEAST * scale.flow;
  const losses = found.greatest + LEAST * scale.potential;
  const still = Math.min(found.moved, found.ahead) <= settings.flowTolerance * flows;
  const grain = GRAIN * scale.level;
  const met = still && found.worst <= settings.headTolerance * losses + grain;
  const exhausted =
    found.worst <= ROUNDING * losses + grain && found.moved <= BARELY_MOVED * (flows + scale.flow);
  return found.changed === 0 && (met || exhausted);
}
