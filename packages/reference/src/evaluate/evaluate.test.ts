import { describe, expect, it } from 'vitest';
import { byUrgency, evaluateRules } from './evaluate.ts';
import type { Fact, FactBook, Subject } from './fact.ts';
import { NOT_APPLICABLE } from './fact.ts';
import { KeptFindings } from './kept-findings.ts';
import { marginOf } from './margin.ts';
import { profileOf, profileUnder } from './profile.ts';
import { defineRule } from './rule.ts';

const PROFILE = profileOf({ country: 'US', region: 'CO' }, '2026-10-01');
const JOB: Subject = { scope: 'job', id: '-', label: '' };

function bookOf(facts: Readonly<Record<string, Fact>>): FactBook {
  return {
    subjects: (scope) => (scope === 'job' ? [JOB] : []),
    fact: (_subject, name) => facts[name] ?? { state: 'unknown', missing: [`reading of ${name}`] },
  };
}

function known(value: number, plusMinus = 0): Fact {
  return { state: 'number', value, kind: 'pressure', plusMinus };
}

const atLeastHundred = defineRule({
  id: 'gas.example',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.found' },
  words: {},
  editions: [
    {
      edition: 'any',
      from: '1900-01-01',
      source: { document: 'example', known: 'from memory' },
      values: { least: 100 },
    },
  ],
  check: (n, _w, values) => ({
    sense: 'at-least',
    required: values.least,
    found: n.found,
    kind: 'pressure',
    yardstick: values.least,
  }),
});

function judged(fact: Fact) {
  const [finding] = evaluateRules([atLeastHundred], bookOf({ 'job.found': fact }), PROFILE);
  if (finding === undefined) throw new Error('no finding');
  return finding;
}

describe('a verdict', () => {
  it.each([
    [99.999, 0, 'fails'],
    [100, 0, 'tight'],
    [109.9, 0, 'tight'],
    [110.1, 0, 'meets'],
    [130, 40, 'tight'],
    [150, 40, 'meets'],
    // What is known to be too little fails, however wide its ±.
    [99, 40, 'fails'],
  ])('of %d ± %d against at least 100 with a guard of 10 %% is %s', (value, plusMinus, verdict) => {
    expect(judged(known(value, plusMinus)).verdict).toBe(verdict);
  });

  it('says whether the guard or the ± makes it tight', () => {
    expect(judged(known(105)).tightBy).toBe('guard');
    expect(judged(known(130, 40)).tightBy).toBe('uncertainty');
  });

  it('is unknown without its facts, and names the readings that would supply them', () => {
    const finding = judged({ state: 'unknown', missing: ['gasSupply/-/setPressure'] });
    expect(finding.verdict).toBe('unknown');
    expect(finding.missing).toEqual(['gasSupply/-/setPressure']);
  });

  it('is unknown even when nobody can name the missing reading', () => {
    expect(judged({ state: 'unknown', missing: [] }).verdict).toBe('unknown');
  });

  it('does not apply where a fact does not', () => {
    expect(judged(NOT_APPLICABLE).verdict).toBe('does not apply');
  });

  it('carries check the book wherever the figure is from memory', () => {
    expect(judged(known(200)).checkTheBook).toBe(true);
  });

  it('refuses a fact of the wrong sort: that is a bug, not a finding', () => {
    expect(() => judged({ state: 'word', value: 'yes' })).toThrow('gas.example');
  });
});

describe('margins', () => {
  const kind = 'pressure' as const;

  it('are signed towards the safe side, over the yardstick', () => {
    expect(marginOf({ sense: 'at-least', required: 4, found: 5, kind, yardstick: 2 })).toBeCloseTo(0.5, 12);
    expect(marginOf({ sense: 'at-most', required: 4, found: 5, kind, yardstick: 2 })).toBeCloseTo(-0.5, 12);
  });

  it('of a band are 1 in its middle and 0 at either end', () => {
    const band = { sense: 'within', low: 30, high: 130, kind } as const;
    expect(marginOf({ ...band, found: 80 })).toBeCloseTo(1, 12);
    expect(marginOf({ ...band, found: 30 })).toBeCloseTo(0, 12);
    expect(marginOf({ ...band, found: 130 })).toBeCloseTo(0, 12);
    expect(marginOf({ ...band, found: 20 })).toBeCloseTo(-0.2, 12);
  });

  it('do not exist for yes and no', () => {
    expect(marginOf({ sense: 'holds', holds: true })).toBeUndefined();
  });

  it('is nothing at the limit, in whatever unit that was read', () => {
    const required = 30 * 6894.757293168361;
    const found = ((30 * 0.45359237 * 9.80665) / 0.0254 ** 2 / 1000) * 1000 * (1 - 2e-16);
    expect(found).not.toBe(required);
    expect(marginOf({ sense: 'at-least', required, found, kind, yardstick: required })).toBe(0);
    expect(marginOf({ sense: 'at-least', required: 1, found: 1 - 1e-8, kind, yardstick: 1 })).toBeLessThan(0);
  });
});

describe('editions', () => {
  it('hold from their day on, at their place', () => {
    expect(profileOf({ country: 'US' }, '2010-01-01').uncovered).toContain('fuel gas');
    expect(PROFILE.editions).toContain('IFGC 2018');
    const canada = profileOf({ country: 'CA', region: 'QC' }, '2026-10-01');
    expect(canada.editions).not.toContain('IFGC 2018');
    expect(canada.uncovered).toContain('pool and spa');
  });
});

describe('a rule read in an earlier edition', () => {
  const dated = (edition: string, least: number) => ({
    edition,
    from: '2010-01-01',
    source: { document: edition, at: '1', known: 'read in the code' as const },
    values: { least },
  });
  const rule = { ...atLeastHundred, editions: [dated('IFGC 2015', 100), dated('IFGC 2021', 120)] };
  const under = (edition: string) => {
    const profile = profileUnder(PROFILE, edition);
    if (profile === undefined) throw new Error(edition);
    return evaluateRules([rule], bookOf({ 'job.found': known(110) }), profile)[0];
  };

  it('is asked under a later one, and says check the book', () => {
    expect(under('IFGC 2018')).toMatchObject({ edition: 'IFGC 2015', verdict: 'meets', checkTheBook: true });
  });

  it('gives way to the edition in force where that was read', () => {
    expect(under('IFGC 2021')).toMatchObject({ edition: 'IFGC 2021', verdict: 'fails', checkTheBook: false });
    expect(under('IFGC 2015')).toMatchObject({ edition: 'IFGC 2015', checkTheBook: false });
  });

  it('is never carried backwards', () => {
    const late = { ...atLeastHundred, editions: [dated('IFGC 2021', 120)] };
    const profile = profileUnder(PROFILE, 'IFGC 2018');
    expect(evaluateRules([late], bookOf({ 'job.found': known(110) }), profile ?? PROFILE)).toEqual([]);
  });

  it('an edition that nobody carries makes no profile', () => {
    expect(profileUnder(PROFILE, 'IFGC 1999')).toBeUndefined();
  });
});

describe('the order of findings', () => {
  it('puts fails first, then unknown, tight and meets, the smallest margin first', () => {
    const order = [known(300), known(105), { state: 'unknown', missing: [] } as Fact, known(50), known(80)]
      .map(judged)
      .sort(byUrgency)
      .map((finding) => finding.margin?.toFixed(2) ?? finding.verdict);
    expect(order).toEqual(['-0.50', '-0.20', 'unknown', '0.05', '2.00']);
  });
});

describe('findings kept from one evaluation to the next', () => {
  const ask = (kept: KeptFindings, fact: Fact, { label = '', profile = PROFILE } = {}) => {
    const book = { ...bookOf({ 'job.found': fact }), subjects: () => [{ ...JOB, label }] };
    return kept.evaluate([atLeastHundred], book, profile)[0];
  };

  it('are the same object while the facts are', () => {
    const kept = new KeptFindings();
    const fact = known(110);
    const first = ask(kept, fact);
    expect(ask(kept, fact)).toBe(first);
    expect(first).toEqual(judged(fact));
  });

  it('are made anew for another fact, another name of the subject, another place', () => {
    const kept = new KeptFindings();
    const fact = known(110);
    const first = ask(kept, fact);
    expect(ask(kept, known(90))?.verdict).toBe('fails');
    expect(ask(kept, fact)).toEqual(first);
    expect(ask(kept, fact, { label: 'north pool' })?.subject.label).toBe('north pool');
    const canada = profileOf({ country: 'CA' }, '2026-10-01');
    const before = ask(kept, fact);
    expect(ask(kept, fact, { profile: canada })).not.toBe(before);
  });
});
