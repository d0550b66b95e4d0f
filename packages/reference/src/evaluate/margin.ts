/**
 * The margin of an outcome: the distance to its limit over its yardstick, positive on the safe side.
 *
 * A band is divided by half its width, so that its middle stands at 1 and either end at 0.
 * Yes and no have a verdict and no margin.
 *
 * What stands at its limit has margin 0 in whatever unit it was read: 30 psi written in kPa is a last bit off 30 psi.
 */
import type { Outcome } from './rule.ts';

/** Far above what changing units leaves, far below what anybody reads. */
const LAST_BITS = 1e-9;

export function marginOf(outcome: Outcome): number | undefined {
  const margin = bareMargin(outcome);
  return margin !== undefined && Math.abs(margin) < LAST_BITS ? 0 : margin;
}

function bareMargin(outcome: Outcome): number | undefined {
  switch (outcome.sense) {
    case 'at-least':
      return (outcome.found - outcome.required) / outcome.yardstick;
    case 'at-most':
      return (outcome.required - outcome.found) / outcome.yardstick;
    case 'within': {
      const half = (outcome.high - outcome.low) / 2;
      return Math.min(outcome.found - outcome.low, outcome.high - outcome.found) / half;
    }
    default:
      return undefined;
  }
}

/** Whether a figure is at a limit or beyond it, in whatever unit either was read. */
export function reaches(found: number, limit: number): boolean {
  return found >= limit || limit - found < LAST_BITS * Math.abs(limit);
}
