/**
 * The output that warms a basin in the time wanted, its losses counted.
 *
 *     find P with t(P) = t_wanted        between C·ΔT/t + L(start) and C·ΔT/t + L(target)
 *
 * The losses rise with the temperature, so the root lies between the two, and the time falls as the output rises.
 *
 * Convergence: Brent's method to 1e-9 of the output.
 *
 * Source: the inverse of `warmUp`.
 * Range: as `warmUp`; times from a minute to a month.
 * Errors: those of `warmUp`; a time outside the range.
 *
 * Worked example: the inverse of that of `warmUp`: 13.5 h → 100 kW.
 */
import { brentRoot } from '../../numerics/index.ts';
import { DAY, MINUTE } from '../../quantity/index.ts';
import { fail, ok, type Result, variableIssue } from '../../trace/index.ts';
import {
  heatCapacityOf,
  lossCurve,
  questionIssues,
  type WarmUpQuestion,
  warmUpTime,
} from '../warm-up/index.ts';

export interface WarmUpWish extends Omit<WarmUpQuestion, 'output'> {
  /** s. */
  readonly within: number;
}

const WITHIN = { symbol: 't', kind: 'time', min: MINUTE, max: 31 * DAY } as const;

/** Output (W) that warms a basin within a time; 0 where the weather does it alone. */
export function outputToWarmUp(wish: WarmUpWish): Result<number> {
  const { start, target, within } = wish;
  const issues = questionIssues({ ...wish, output: 1 });
  const timing = variableIssue('within', within, WITHIN);
  if (timing) issues.push(timing);
  if (issues.length > 0) return fail(...issues);
  if (target === start) return ok(0);
  const lossOf = lossCurve(wish);
  const rise = (heatCapacityOf(wish) * (target - start)) / within;
  const [low, high] = [rise + lossOf(start), rise + lossOf(target)];
  if (high <= 0) return ok(0);
  // A longest time instead of an infinite one keeps the function one that a root finder can read.
  const late = (output: number): number => Math.min(warmUpTime({ ...wish, output }), 1e4 * within) - within;
  const widened = { low: Math.max(1e-6, low - 1e-6 * Math.abs(low)), high: high + 1e-6 * Math.abs(high) };
  if (late(widened.low) <= 0) return ok(widened.low);
  return brentRoot(late, widened, { tolerance: 1e-9 * high });
}
