/** A seeded sample of what `npm run soak` runs a million of. */
import { RULES } from '@firstfire/reference';
import { describe, expect, it, vi } from 'vitest';
import { PROOFS } from '../packages/reference/src/codes/limits.table.ts';
import { notReached, runRandomJobs, verdictsOf } from './random-run.ts';
import { UNREACHED } from './unreached.ts';

const JOBS = process.env['FIRSTFIRE_FAST'] ? 200 : 1500;

/** Words that a rule’s proof gives its facts. */
function proved(rule: string): ReadonlySet<string> {
  const facts = PROOFS.filter((proof) => proof.rule === rule)
    .flatMap(({ cases }) => cases)
    .map((one) => (one.sense === 'answer' ? one.facts : one.also));
  const words = facts.flatMap((one) => Object.values(one ?? {})).filter((word) => typeof word === 'string');
  // What is optional and unread comes to a rule as the empty word.
  return new Set(['', ...words]);
}

/** Words that say what one job is about, and no answer anyone could list. */
const FREE = new Set(['water.bypass-range', 'heat.efficiency-least', 'heat.integrated-efficiency']);

describe(`${JOBS} random jobs`, () => {
  const words = new Map<string, Set<string>>();
  for (const rule of RULES) {
    const check = rule.check;
    vi.spyOn(rule, 'check').mockImplementation((n, w, values) => {
      const given = words.get(rule.id) ?? new Set();
      words.set(rule.id, given);
      for (const word of Object.values(w)) given.add(word);
      return check(n, w, values);
    });
  }
  const run = runRandomJobs(1, JOBS);
  vi.restoreAllMocks();

  it('yield no exception, no number that is none and no verdict without a source', () => {
    expect(run.faults).toEqual([]);
  });

  it('give a rule no word that its proof does not hold', () => {
    const strange = [...words].flatMap(([rule, given]) => {
      if (FREE.has(rule)) return [];
      const known = proved(rule);
      return [...given].filter((word) => !known.has(word)).map((word) => `${rule}: ${word}`);
    });
    expect(words.size).toBeGreaterThan(100);
    expect(strange).toEqual([]);
  });

  it('reach no verdict that is said to be out of reach', () => {
    const lacking = new Set(notReached(run));
    const reached = Object.keys(UNREACHED).filter((name) => name.includes(': ') && !lacking.has(name));
    expect(reached).toEqual([]);
  });

  it('could come to three verdicts of every rule at least', () => {
    expect(RULES.filter(({ id }) => verdictsOf(id).size < 3).map(({ id }) => id)).toEqual([]);
  });
});
