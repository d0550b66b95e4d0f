/** Which edition asks what of the circuit, and why a tap fails. Limits stand in `limits.table.ts`. */
import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import {
  evaluateRules,
  type Fact,
  type FactBook,
  type Finding,
  profileOf,
  profileUnder,
  type Subject,
} from '../../evaluate/index.ts';
import { POWER_RULES } from './index.ts';

const { FOOT, gaugeArea, INCH } = quantity;
const US = profileOf({ country: 'US', region: 'CO' }, '2026-10-01');
const OLD_CALIFORNIA = profileOf({ country: 'US', region: 'CA' }, '2016-06-01');
const CANADA = profileOf({ country: 'CA', region: 'QC' }, '2026-10-01');

type Facts = Readonly<Record<string, number | string>>;

function findingOf(rule: string, facts: Facts, profile = US): Finding | undefined {
  const fact = (name: string): Fact => {
    const value = facts[name.slice(name.indexOf('.') + 1)];
    if (value === undefined) return { state: 'unknown', missing: [name] };
    return typeof value === 'string'
      ? { state: 'word', value }
      : { state: 'number', value, kind: 'length', plusMinus: 0 };
  };
  const book: FactBook = {
    subjects: (scope): readonly Subject[] => [{ scope, id: '1', label: '' }],
    fact: (_subject, name) => fact(name),
  };
  const rules = POWER_RULES.filter((one) => one.id === `power.${rule}`);
  return evaluateRules(rules, book, profile)[0];
}

const verdictOf = (rule: string, facts: Facts, profile = US): string | undefined =>
  findingOf(rule, facts, profile)?.verdict;

const near = { 'burial-from-pool': 4.9 * FOOT } as const;

it('a tingle stops everything', () => {
  expect(findingOf('no-tingle', { tingle: 'yes' })?.stops).toBe(true);
});

describe('the selector', () => {
  // Common practice, no source: 240 V tap on 120 V halves the control voltage; 208 V buildings on a 240 V tap.
  it.each([
    [120, '240', 'tap-too-high'],
    [208, '240', 'tap-too-high'],
    [240, '120', 'tap-too-low'],
    [240, '208', 'tap-too-low'],
    [277, '240', 'no-tap-fits'],
    [160, '240', 'no-tap-fits'],
  ] as const)('%i V on the %s V tap fails and says why', (volts, selector, reason) => {
    const found = findingOf('selector', { 'volts-idle': volts, selector });
    expect(found?.verdict).toBe('fails');
    expect(found?.outcome).toMatchObject({ because: { reason } });
  });

  it.each([
    [120, '120'],
    [208, '208'],
    [240, '240'],
  ] as const)('%i V on its own tap is right', (volts, selector) => {
    const found = findingOf('selector', { 'volts-idle': volts, selector });
    expect(found?.margin).toBeCloseTo(1, 12);
    expect(found?.outcome).not.toHaveProperty('because');
  });
});

describe('editions', () => {
  it('ask for ground-fault protection of a gas heater from 2017 on', () => {
    const facts = { volts: 240, gfci: 'no' };
    expect(verdictOf('ground-fault', facts, OLD_CALIFORNIA)).toBeUndefined();
    expect(verdictOf('ground-fault', facts)).toBe('fails');
    expect(findingOf('ground-fault', facts)?.checkTheBook).toBe(false);
    expect(findingOf('ground-fault', facts, profileUnder(US, 'NEC 2023'))?.checkTheBook).toBe(true);
  });

  it('ask for it in Canada within 3 m of the inside wall', () => {
    const at = (metres: number, gfci: string): string | undefined =>
      verdictOf('ground-fault-near-water', { 'water-reach': metres, gfci }, CANADA);
    expect(at(3, 'no')).toBe('fails');
    expect(at(2.9, 'yes')).toBe('meets');
    expect(at(3.001, 'no')).toBe('does not apply');
    expect(verdictOf('ground-fault', { volts: 240, gfci: 'no' }, CANADA)).toBeUndefined();
  });

  it('ask for a depth of its own near the pool until 2017', () => {
    const facts = { ...near, cover: 0.1, 'cover-near-pool': 18 * INCH };
    expect(verdictOf('burial-near-pool', facts, OLD_CALIFORNIA)).toBe('fails');
    expect(verdictOf('burial-near-pool', facts)).toBe('does not apply');
  });

  it('ask for 8 AWG of bonding in the United States and 6 AWG in Canada', () => {
    const facts = { 'bond-conductor': gaugeArea(8) };
    expect(verdictOf('bond-size', facts)).toBe('meets');
    expect(verdictOf('bond-size', facts, CANADA)).toBe('fails');
  });
});
