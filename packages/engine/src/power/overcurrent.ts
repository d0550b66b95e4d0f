/**
 * The current a circuit is laid out for, and the standard size that carries it.
 *
 *     I = I1 + f·I2        f = what a continuous load (three hours and more) counts for
 *
 * A pool heater is a continuous load: it runs for hours. Which f, and which sizes are standard, is a matter of the
 * code and comes in from outside.
 *
 * Source: NEC 210.19(A)(1) and 210.20(A), from memory; NEC 680.9 asks the same of an electric pool heater.
 * Range: 0 to 1000 A, f from 1 to 1.5. Errors: range issues of `evaluate`; a current above the largest size is
 * `no-solution`.
 * Worked example: 12 A continuous and 2 A besides, f = 1.25 → 17 A, so 20 A of the sizes 15, 20, 25.
 */
import { type Formula, fail, ok, type Result, type Source } from '../trace/index.ts';

const SOURCE: Source = {
  document: 'National Electrical Code',
  at: '210.19(A)(1) and 210.20(A)',
  known: 'from memory',
};

export interface MixedLoad {
  /** Running three hours and more, A. */
  readonly continuousCurrent: number;
  /** A. */
  readonly otherCurrent: number;
  readonly continuousFactor: number;
}

/** Current that conductor and breaker are laid out for, A. */
export const designCurrent: Formula<MixedLoad> = {
  id: 'power.design-current',
  equation: 'I = I1 + f·I2',
  inputs: {
    continuousCurrent: { symbol: 'I2', kind: 'current', min: 0, max: 1000 },
    otherCurrent: { symbol: 'I1', kind: 'current', min: 0, max: 1000 },
    continuousFactor: { symbol: 'f', kind: 'ratio', min: 1, max: 1.5 },
  },
  result: { symbol: 'I', kind: 'current' },
  source: SOURCE,
  kernel: (x) => x.otherCurrent + x.continuousFactor * x.continuousCurrent,
};

/** A current this little above a size, as a share of it, is that size: arithmetic leaves such crumbs. */
const CRUMB = 1e-9;

/**
 * The smallest of rising standard sizes (A) that is at least the current (A).
 * Errors: a current that is no number is `not-finite`, one above the largest size is `no-solution`.
 */
export function nextStandardSize(current: number, sizes: readonly number[]): Result<number> {
  if (!Number.isFinite(current))
    return fail({ code: 'not-finite', where: 'current', found: String(current) });
  const size = sizes.find((one) => one * (1 + CRUMB) >= current);
  if (size !== undefined) return ok(size);
  return fail({ code: 'no-solution', where: 'current', reason: 'above-largest-size' });
}
