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

const { FOOT, gaugeArea, INCH, MINUTE } = quantity;
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

interface Limit {
  readonly rule: string;
  readonly fact: string;
  readonly limit: number;
  readonly sense: 'at-least' | 'at-most';
  readonly also?: Facts;
  readonly profile?: typeof US;
}

const near = { 'burial-from-pool': 4.9 * FOOT } as const;

// Limits from the sections each rule cites, in the units they print; voltages from the shares practice names.
const LIMITS: readonly Limit[] = [
  { rule: 'voltage-idle', fact: 'volts-idle', limit: 108, sense: 'at-least', also: { volts: 120 } },
  { rule: 'voltage-idle', fact: 'volts-idle', limit: 264, sense: 'at-most', also: { volts: 240 } },
  { rule: 'voltage-running', fact: 'volts-running', limit: 216, sense: 'at-least', also: { volts: 240 } },
  { rule: 'selector', fact: 'volts-idle', limit: 216, sense: 'at-least', also: { selector: '240' } },
  { rule: 'selector', fact: 'volts-idle', limit: 132, sense: 'at-most', also: { selector: '120' } },
  { rule: 'control-voltage', fact: 'control-volts', limit: 20.4, sense: 'at-least' },
  { rule: 'control-voltage', fact: 'control-volts', limit: 26.4, sense: 'at-most' },
  { rule: 'voltage-at-start', fact: 'volts-at-start', limit: 204, sense: 'at-least', also: { volts: 240 } },
  { rule: 'voltage-drop', fact: 'voltage-drop', limit: 0.03, sense: 'at-most' },
  { rule: 'voltage-drop', fact: 'voltage-drop', limit: 0.03, sense: 'at-most', profile: CANADA },
  { rule: 'supply-sag', fact: 'volts-running', limit: 228, sense: 'at-least', also: { 'volts-idle': 240 } },
  {
    rule: 'wire-carries-load',
    fact: 'wire-ampacity',
    limit: 16,
    sense: 'at-least',
    also: { 'circuit-load': 16 },
  },
  {
    rule: 'breaker-carries-load',
    fact: 'breaker',
    limit: 20,
    sense: 'at-least',
    also: { 'circuit-load': 16 },
  },
  {
    rule: 'breaker-protects-wire',
    fact: 'breaker',
    limit: 20,
    sense: 'at-most',
    also: { 'breaker-most': 20 },
  },
  {
    rule: 'equipment-ground',
    fact: 'equipment-ground',
    limit: gaugeArea(12),
    sense: 'at-least',
    also: { 'equipment-ground-least': gaugeArea(12) },
  },
  { rule: 'disconnect-from-water', fact: 'disconnect-reach', limit: 5 * FOOT, sense: 'at-least' },
  { rule: 'bond-size', fact: 'bond-conductor', limit: gaugeArea(8), sense: 'at-least' },
  { rule: 'bond-size', fact: 'bond-conductor', limit: gaugeArea(6), sense: 'at-least', profile: CANADA },
  {
    rule: 'water-bond',
    fact: 'water-contact',
    limit: 9 * INCH ** 2,
    sense: 'at-least',
    also: { 'metal-header': 'leaves' },
  },
  { rule: 'perimeter-width', fact: 'perimeter-width', limit: 3 * FOOT, sense: 'at-least' },
  { rule: 'ring-distance', fact: 'ring-distance', limit: 18 * INCH, sense: 'at-least' },
  { rule: 'ring-distance', fact: 'ring-distance', limit: 24 * INCH, sense: 'at-most' },
  { rule: 'ring-depth', fact: 'ring-depth', limit: 4 * INCH, sense: 'at-least' },
  { rule: 'ring-depth', fact: 'ring-depth', limit: 6 * INCH, sense: 'at-most' },
  { rule: 'grid-pitch', fact: 'grid-pitch', limit: 8 * INCH, sense: 'at-least' },
  { rule: 'grid-pitch', fact: 'grid-pitch', limit: 16 * INCH, sense: 'at-most' },
  {
    rule: 'burial-depth',
    fact: 'cover',
    limit: 18 * INCH,
    sense: 'at-least',
    also: { 'cover-least': 18 * INCH },
  },
  {
    rule: 'burial-near-pool',
    fact: 'cover',
    limit: 6 * INCH,
    sense: 'at-least',
    also: { ...near, 'cover-near-pool': 6 * INCH },
    profile: OLD_CALIFORNIA,
  },
  { rule: 'low-voltage-spacing', fact: 'control-spacing', limit: 2 * INCH, sense: 'at-least' },
  {
    rule: 'run-on',
    fact: 'run-on',
    limit: 5 * MINUTE,
    sense: 'at-least',
    also: { 'run-on-least': 5 * MINUTE },
  },
  { rule: 'remote-from-water', fact: 'remote-distance', limit: 10 * FOOT, sense: 'at-least' },
];

describe('a limit of the power line', () => {
  it.each(LIMITS)('$rule: $fact $sense $limit', ({ rule, fact, limit, sense, also, profile }) => {
    const at = (share: number): Finding | undefined =>
      findingOf(rule, { ...also, [fact]: share * limit }, profile);
    const over = sense === 'at-least' ? 1 : -1;
    expect(at(1 - over * 1e-3)?.verdict).toBe('fails');
    expect(['tight', 'meets']).toContain(at(1 + over * 1e-9)?.verdict);
    expect(at(1 + over * 1e-9)?.margin).toBeCloseTo(0, 6);
    // Far enough inside for the guard, and still inside a band.
    expect(at(1 + over * 0.12)?.verdict).toBe('meets');
  });
});

describe('a yes or no of the power line', () => {
  // What each answer means, by the section the rule cites.
  it.each([
    ['conductor-copper', { 'conductor-metal': 'copper' }, 'meets'],
    ['conductor-copper', { 'conductor-metal': 'aluminium' }, 'fails'],
    ['ground-fault', { volts: 240, gfci: 'yes' }, 'meets'],
    ['ground-fault', { volts: 15.1, gfci: 'no' }, 'fails'],
    ['ground-fault', { volts: 15, gfci: 'no' }, 'does not apply'],
    ['disconnect-in-sight', { 'disconnect-in-sight': 'yes' }, 'meets'],
    ['disconnect-in-sight', { 'disconnect-in-sight': 'no' }, 'fails'],
    ['fixed-wiring', { connection: 'fixed wiring' }, 'meets'],
    ['fixed-wiring', { connection: 'cord and plug' }, 'meets'],
    ['fixed-wiring', { connection: 'extension cord' }, 'fails'],
    ['bonded', { bonded: 'yes' }, 'meets'],
    ['bonded', { bonded: 'no' }, 'fails'],
    ['bond-solid', { 'bond-strands': 'solid' }, 'meets'],
    ['bond-solid', { 'bond-strands': 'stranded' }, 'fails'],
    ['perimeter-bonded', { perimeter: 'copper ring' }, 'meets'],
    ['perimeter-bonded', { perimeter: 'none' }, 'fails'],
    ['perimeter-bonded', { perimeter: 'existing' }, 'does not apply'],
    ['perimeter-points', { 'perimeter-points': 3 }, 'fails'],
    ['perimeter-points', { 'perimeter-points': 4 }, 'meets'],
    ['perimeter-points', { 'perimeter-points': 5 }, 'meets'],
    ['low-voltage-apart', { 'control-route': 'own raceway' }, 'meets'],
    ['low-voltage-apart', { 'control-route': 'with power' }, 'fails'],
    ['low-voltage-apart', { 'control-route': 'none' }, 'does not apply'],
    ['interlocked', { interlocked: 'yes' }, 'meets'],
    ['interlocked', { interlocked: 'no' }, 'fails'],
    ['local-limit', { 'local-limit': 'yes' }, 'meets'],
    ['local-limit', { 'local-limit': 'no' }, 'fails'],
    ['no-tingle', { tingle: 'no' }, 'meets'],
    ['no-tingle', { tingle: 'yes' }, 'fails'],
    ['raceway-near-pool', { ...near, 'buried-raceway': 'yes' }, 'meets'],
    ['raceway-near-pool', { ...near, 'buried-raceway': 'no' }, 'fails'],
    ['raceway-near-pool', { 'burial-from-pool': 5.1 * FOOT, 'buried-raceway': 'no' }, 'does not apply'],
  ] as const)('%s: %o', (rule, facts, verdict) => {
    expect(verdictOf(rule, facts)).toBe(verdict);
  });

  it('stops everything where anyone feels a tingle', () => {
    expect(findingOf('no-tingle', { tingle: 'yes' })?.stops).toBe(true);
  });

  it('of nothing that is drawn or asked for does not apply', () => {
    expect(verdictOf('wire-carries-load', { 'wire-ampacity': 20, 'circuit-load': 0 })).toBe('does not apply');
    expect(verdictOf('breaker-carries-load', { breaker: 20, 'circuit-load': 0 })).toBe('does not apply');
    expect(verdictOf('run-on', { 'run-on': 0, 'run-on-least': 0 })).toBe('does not apply');
    expect(verdictOf('burial-depth', { cover: 0, 'cover-least': 0 })).toBe('does not apply');
    expect(verdictOf('supply-sag', { 'volts-idle': 0, 'volts-running': 0 })).toBe('does not apply');
  });
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
