/**
 * The iteration: gradient steps with status checks, and, if these have not settled, damped steps whose every one
 * lessens the content of the network.
 *
 * Converged means: no link changed its state; no link misses its law by more than `headTolerance` of the greatest
 * loss; and the flows changed by less than `flowTolerance` of their sum, or would do so next. Bounded by
 * `maxIterations`.
 */
import { dampedSweep } from './line-search.ts';
import type { Scale } from './scale.ts';
import type { NetworkState } from './state.ts';
import type { Margins } from './status.ts';
import { continuityError, movePotentials, resweep, sweep } from './sweep.ts';

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
    follow: false,
  };
  const found = net.measures;
  outcome.converged = false;
  resweep(net, margins);
  let iteration = 0;
  while (!outcome.converged && iteration < settings.maxIterations) {
    iteration += 1;
    margins.follow = iteration > PLAIN_STEPS;
    movePotentials(net);
    if (margins.follow) dampedSweep(net, margins);
    else sweep(net, margins);
    if (!Number.isFinite(found.total)) break;
    const flows = found.total + LEAST * scale.flow;
    const steady = Math.min(found.moved, found.ahead) <= settings.flowTolerance * flows;
    const met = found.worst <= settings.headTolerance * (found.greatest + LEAST * scale.potential);
    outcome.converged = found.changed === 0 && steady && met;
  }
  outcome.iterations = iteration;
  const head = found.worst / (found.greatest + LEAST * scale.potential);
  outcome.residual = Math.max(head, continuityError(net, LEAST * scale.flow));
}
