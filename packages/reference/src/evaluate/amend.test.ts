import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { type Amendment, amendedRules } from './amend.ts';
import { evaluateRules } from './evaluate.ts';
import type { Fact, FactBook } from './fact.ts';
import { profileOf } from './profile.ts';
import { type AnyRule, defineRule, type Edition } from './rule.ts';

const PROFILE = profileOf({ country: 'US', region: 'CO' }, '2026-10-01');
const { INCH } = quantity;

function entry<V>(edition: string, values: V): readonly Edition<V>[] {
  return [
    { edition, from: '2010-01-01', source: { document: edition, at: '1', known: 'from memory' }, values },
  ];
}

const depth = defineRule({
  id: 'gas.depth',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.cover' },
  words: {},
  guard: 0,
  editions: entry('IFGC 2018', { limit: 12 * INCH }),
  check: (n, _w, { limit }) => ({
    sense: 'at-least',
    required: limit,
    found: n.found,
    kind: 'length',
    yardstick: limit,
  }),
});

const band = defineRule({
  id: 'water.band',
  line: 'water',
  scope: 'job',
  numbers: { found: 'job.cover' },
  words: {},
  editions: entry('any', { low: 1, high: 2 }),
  check: (n, _w, { low, high }) => ({ sense: 'within', low, high, found: n.found, kind: 'length' }),
});

const yes = defineRule({
  id: 'gas.elsewhere',
  line: 'gas',
  scope: 'job',
  numbers: {},
  words: { said: 'job.said' },
  editions: entry('B149.1-20', {}),
  check: (_n, w) => ({ sense: 'holds', holds: w.said === 'yes' }),
});

const RULES: readonly AnyRule[] = [depth, band, yes];

function bookOf(facts: Readonly<Record<string, Fact>>): FactBook {
  return {
    subjects: (scope) => (scope === 'job' ? [{ scope, id: '-', label: '' }] : []),
    fact: (_subject, name) => facts[name] ?? { state: 'unknown', missing: [name] },
  };
}

const covered = (inches: number): Fact => ({
  state: 'number',
  value: inches * INCH,
  kind: 'length',
  plusMinus: 0.01,
});

function entered(changes: Partial<Amendment>): Amendment {
  return { where: 'amendments/a1', rule: 'gas.depth', asked: true, citation: 'Town code 15.08', ...changes };
}

function judged(amendments: readonly Amendment[], inches = 15) {
  const book = bookOf({ 'job.cover': covered(inches), 'job.said': { state: 'word', value: 'no' } });
  const { rules, issues } = amendedRules(RULES, amendments, { book, profile: PROFILE });
  const findings = evaluateRules(rules, book, PROFILE);
  return { issues, of: (rule: string) => findings.find((finding) => finding.rule === rule) };
}

describe('a local amendment', () => {
  it.each([
    [17.99, 'fails'],
    [18, 'meets'],
    [18.01, 'meets'],
    [15, 'fails'],
  ])('of 18 in stands in the place of 12 in: %d in', (inches, verdict) => {
    const finding = judged([entered({ required: '18 in' })], inches).of('gas.depth');
    // Its own yardstick: the ± of 1 cm is a share of 18 in.
    expect(finding?.plusMinus).toBeCloseTo(0.01 / (18 * INCH), 9);
    expect(finding?.verdict.replace('tight', 'meets')).toBe(verdict);
    expect(finding).toMatchObject({
      source: { document: 'Town code 15.08', known: 'local amendment, as entered' },
      checkTheBook: false,
    });
  });

  it('in other units, or laxer than the code, counts just so', () => {
    expect(judged([entered({ required: '450 mm' })], 18).of('gas.depth')?.outcome).toMatchObject({
      required: 0.45,
    });
    expect(judged([entered({ required: '6 in' })], 7).of('gas.depth')?.verdict).toBe('meets');
  });

  it('without a figure leaves the edition’s, and cites the place', () => {
    expect(judged([entered({})]).of('gas.depth')).toMatchObject({
      outcome: { required: 12 * INCH },
      source: { document: 'Town code 15.08' },
    });
  });

  it('that asks nothing says so', () => {
    expect(judged([entered({ asked: false })]).of('gas.depth')).toMatchObject({
      verdict: 'does not apply',
      outcome: { because: { reason: 'not-asked-here' } },
    });
  });

  it('asks a rule of which no edition is in force here', () => {
    expect(judged([]).of('gas.elsewhere')).toBeUndefined();
    expect(judged([entered({ rule: 'gas.elsewhere' })]).of('gas.elsewhere')?.verdict).toBe('fails');
  });

  it('of a band has both its ends', () => {
    const found = judged([entered({ rule: 'water.band', required: '10 in to 16 in' })]).of('water.band');
    expect(found).toMatchObject({ outcome: { low: 10 * INCH, high: 16 * INCH } });
  });

  it('leaves every other rule as it is', () => {
    const book = bookOf({});
    expect(amendedRules(RULES, [], { book, profile: PROFILE }).rules).toBe(RULES);
    expect(amendedRules(RULES, [entered({})], { book, profile: PROFILE }).rules[1]).toBe(band);
  });
});

describe('an amendment that cannot be read changes nothing, and is named', () => {
  it.each([
    [{ rule: 'gas.nothing' }, 'rule', 'not-understood', 'no-such-rule'],
    [{ required: '18 psi' }, 'required', 'not-understood', undefined],
    [{ required: 'deep' }, 'required', 'not-understood', undefined],
    [{ required: '10 in to 16 in' }, 'required', 'not-understood', 'one-figure-expected'],
    [{ rule: 'water.band', required: '10 in' }, 'required', 'not-understood', 'two-figures-expected'],
    [{ rule: 'water.band', required: '16 in to 10 in' }, 'required', 'contradiction', 'figures-not-in-order'],
    [{ rule: 'gas.elsewhere', required: '10 in' }, 'required', 'contradiction', 'rule-has-no-figure'],
  ] as const)('%j', (changes, field, code, reason) => {
    const found = judged([entered(changes)]);
    expect(found.issues).toHaveLength(1);
    expect(found.issues[0]).toMatchObject({ where: `amendments/a1/${field}`, code });
    if (reason !== undefined) expect(found.issues[0]?.reason).toBe(reason);
    expect(found.of('gas.depth')?.source.document).toBe('IFGC 2018');
  });

  it('or is the second of the same rule', () => {
    const found = judged([
      entered({ required: '18 in' }),
      entered({ where: 'amendments/a2', required: '2 in' }),
    ]);
    expect(found.issues).toEqual([
      expect.objectContaining({ where: 'amendments/a2/rule', reason: 'amended-twice' }),
    ]);
    expect(found.of('gas.depth')?.outcome).toMatchObject({ required: 18 * INCH });
  });
});
