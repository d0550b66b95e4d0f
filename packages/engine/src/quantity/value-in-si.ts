/** A stored value and unit turned into SI, when the unit may be anything a file holds. */
import { fail, ok, type Result } from '../trace/issue.ts';
import { toSi } from './convert.ts';
import { findUnit, unitsOf } from './find-unit.ts';
import type { Kind } from './kinds.ts';

/**
 * SI value of `value` in the unit that `unit` names for `kind`.
 *
 * Errors: `not-understood` with the units of the kind for a unit it does not have; `not-finite` for a value that is
 * no number. Never throws.
 * Worked example: valueInSi(7, 'in w.c.', 'pressure') → 1743.6 Pa.
 */
export function valueInSi(value: number, unit: string, kind: Kind): Result<number> {
  const found = findUnit(unit, kind);
  if (found === undefined) {
    const expected = unitsOf(kind).map((one) => one.id);
    return fail({ code: 'not-understood', where: '', found: unit, kind, reason: 'unit-unknown', expected });
  }
  const si = toSi(value, found.unit);
  return Number.isFinite(si) ? ok(si) : fail({ code: 'not-finite', where: '', found: String(value), kind });
}
