/**
 * The iteration: gradient steps with status checks, and, if these have not settled, damped steps whose every one
 * lessens the content of the network.
 *
 * Converged means: no link changed its state, the flows changed by less than `flowTolerance` of their sum, and no
 * link misses its law by more than `headTolerance` of the greatest loss. Bounded by `maxIterations`.
 */
import { evaluateLinks } from './evaluate.ts';
import { shortenStep, stepStrength } from './line-search.ts';
import { continuityError, flowChange, headError } from './measure.ts';
import type { Scale } from './scale.ts';
import type { NetworkState } from './state.ts';
import { followFlow, updateStatus } from './status.ts';
import { gradientStep } from './step.ts';

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
const SLOPE_FLOOR = 1e-9;

export interface Outcome {
  converged: boolean;
  iterations: number;
  residual: number;
}

/** Iterates from the present flows; writes how it went into `outcome`. */
export function iterate(net: NetworkState, scale: Scale, settings: Settings, outcome: Outcome): void {
  const floor = (SLOPE_FLOOR * scale.potential) / scale.flow;
  const leastFlow = LEAST * scale.flow;
  const leastLoss = LEAST * scale.potential;
  outcome.converged = false;
  evaluateLinks(net.links, floor);
  let iteration = 0;
  while (!outcome.converged && iteration < settings.maxIterations) {
    iteration += 1;
    const damped = iteration > PLAIN_STEPS;
    gradientStep(net);
    const change = flowChange(net, leastFlow);
    if (!Number.isFinite(change)) break;
    const changed = settle(net, scale, damped, floor);
    outcome.converged =
      changed === 0 &&
      change <= settings.flowTolerance &&
      headError(net, leastLoss) <= settings.headTolerance;
  }
  outcome.iterations = iteration;
  outcome.residual = Math.max(headError(net, leastLoss), continuityError(net, leastFlow));
}

/** States and laws at the new flows; how many links changed state. */
function settle(net: NetworkState, scale: Scale, damped: boolean, floor: number): number {
  if (!damped) {
    const changed = updateStatus(net, scale);
    evaluateLinks(net.links, floor);
    return changed;
  }
  const strength = stepStrength(net);
  const changed = updateStatus(net, scale, true);
  followFlow(net.links);
  evaluateLinks(net.links, floor);
  shortenStep(net, strength, floor);
  return changed;
}
