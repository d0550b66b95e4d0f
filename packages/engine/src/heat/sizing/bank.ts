/**
 * Several equal heaters that together give what is needed, with one to spare where that is asked for.
 *
 *     n·unit ≥ needed        with a spare: (n − 1)·unit ≥ needed
 *
 * Of the sets that suffice the one with the least output in all is taken, of equal ones the one with fewer heaters.
 *
 * Source: arithmetic; a spare heater for public pools is *common practice, no source*.
 * Range: needed output from 0; units above 0; 1 to 12 heaters.
 * Errors: values outside; `no-solution` where the most heaters of the largest unit are not enough, with what they give
 * as `max`.
 *
 * Worked example: 250 kW of units of 60, 90 and 117 kW, at most 4 → 3 of 90 kW; with a spare → 4 of 90 kW.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';

export interface BankQuestion {
  /** W. */
  readonly needed: number;
  /** Outputs to choose from, W. */
  readonly units: readonly number[];
  /** Heaters at most. */
  readonly most: number;
  /** One more than needed, so that any may be out. */
  readonly spare: boolean;
}

export interface Bank {
  readonly count: number;
  /** W each. */
  readonly unit: number;
  /** W of all. */
  readonly total: number;
}

const MOST_HEATERS = 12;

/** The smallest bank of equal heaters. */
export function heaterBank(question: BankQuestion): Result<Bank> {
  const issues = bankIssues(question);
  if (issues.length > 0) return fail(...issues);
  const { needed, units, most, spare } = question;
  const banks = units.flatMap((unit) => {
    const count = Math.max(1, Math.ceil(needed / unit - 1e-9)) + (spare ? 1 : 0);
    return count <= most ? [{ count, unit, total: count * unit }] : [];
  });
  const [best] = banks.sort((a, b) => a.total - b.total || a.count - b.count);
  if (best) return ok(best);
  const max = Math.max(...units) * (spare ? most - 1 : most);
  return fail({
    code: 'no-solution',
    where: 'needed',
    found: needed,
    max,
    kind: 'heat-rate',
    reason: 'units-too-small',
  });
}

function bankIssues({ needed, units, most }: BankQuestion): Issue[] {
  const issues: Issue[] = [];
  if (!(needed >= 0 && Number.isFinite(needed)))
    issues.push({ code: 'out-of-range', where: 'needed', found: needed, min: 0, kind: 'heat-rate' });
  if (!(Number.isInteger(most) && most >= 1 && most <= MOST_HEATERS))
    issues.push({ code: 'out-of-range', where: 'most', found: most, min: 1, max: MOST_HEATERS });
  if (units.length === 0) issues.push({ code: 'ill-formed', where: 'units', reason: 'none' });
  units.forEach((unit, i) => {
    if (!(unit > 0 && Number.isFinite(unit)))
      issues.push({ code: 'out-of-range', where: `units.${i + 1}`, found: unit, min: 0, kind: 'heat-rate' });
  });
  return issues;
}
