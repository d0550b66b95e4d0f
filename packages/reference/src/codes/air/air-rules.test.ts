import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { evaluateRules, type Fact, type FactBook, profileOf, type Subject } from '../../evaluate/index.ts';
import { AIR_RULES } from './index.ts';

const { BTU, FOOT, HOUR, INCH } = quantity;
const US = profileOf({ country: 'US', region: 'CO' }, '2026-10-01');
const CANADA = profileOf({ country: 'CA', region: 'QC' }, '2026-10-01');
const HEATER: Subject = { scope: 'heater', id: 'h1', label: '' };
const kBtu = (input: number): number => (input * 1000 * BTU) / HOUR;

type Facts = Readonly<Record<string, number | string>>;

function verdict(rule: string, facts: Facts, profile = US): string | undefined {
  const fact = (name: string): Fact => {
    const value = facts[name.replace('heater.', '')];
    if (value === undefined) return { state: 'unknown', missing: [name] };
    return typeof value === 'string'
      ? { state: 'word', value }
      : { state: 'number', value, kind: 'length', plusMinus: 0 };
  };
  const book: FactBook = {
    subjects: (scope) => (scope === 'heater' ? [HEATER] : []),
    fact: (_subject, name) => fact(name),
  };
  const rules = AIR_RULES.filter((one) => one.id === rule);
  return evaluateRules(rules, book, profile)[0]?.verdict;
}

/** A finding just on the wrong side of its limit, on it, and well on the right side. */
function around(limit: number, sense: 'at-least' | 'at-most'): readonly (readonly [number, string])[] {
  const [wrong, right] = sense === 'at-least' ? [0.999, 1.2] : [1.001, 0.8];
  return [
    [wrong * limit, 'fails'],
    [limit, 'tight or met'],
    [right * limit, 'meets'],
  ];
}

interface Limit {
  readonly rule: string;
  readonly fact: string;
  readonly limit: number;
  readonly sense: 'at-least' | 'at-most';
  readonly also?: Facts;
  readonly profile?: typeof US;
}

const wall = { terminal: 'through the wall', 'terminal-over-opening': 0, input: kBtu(250) } as const;
const direct = { ...wall, terminal: 'direct vent' } as const;
const outdoors = { ...wall, terminal: 'outdoors' } as const;
const inlet = { terminal: 'through the wall', 'terminal-over-inlet': 0 } as const;

// Limits from the sections each rule cites, in the units they print.
const LIMITS: readonly Limit[] = [
  { rule: 'air.combustion-air', fact: 'air-share', limit: 1, sense: 'at-least' },
  { rule: 'air.supply-opening', fact: 'supply-opening-share', limit: 1, sense: 'at-least', profile: CANADA },
  { rule: 'air.high-opening', fact: 'high-opening-share', limit: 1, sense: 'at-least', profile: CANADA },
  { rule: 'air.opening-low', fact: 'opening-low-floor', limit: 12 * INCH, sense: 'at-most' },
  { rule: 'air.opening-high', fact: 'opening-high-ceiling', limit: 12 * INCH, sense: 'at-most' },
  { rule: 'air.opening-side', fact: 'opening-least-side', limit: 3 * INCH, sense: 'at-least' },
  { rule: 'air.room-pull', fact: 'room-pull', limit: 5, sense: 'at-most', also: { venting: 'fan-assisted' } },
  { rule: 'air.room-pull', fact: 'room-pull', limit: 25, sense: 'at-most', also: { venting: 'condensing' } },
  {
    rule: 'air.vent-carries',
    fact: 'vent-most',
    limit: kBtu(250),
    sense: 'at-least',
    also: { input: kBtu(250), 'vent-reach': 'table' },
  },
  {
    rule: 'air.vent-stays-dry',
    fact: 'input-at-site',
    limit: kBtu(40),
    sense: 'at-least',
    also: { 'vent-least': kBtu(40) },
  },
  {
    rule: 'air.common-vent-carries',
    fact: 'common-most',
    limit: kBtu(500),
    sense: 'at-least',
    also: { 'common-input': kBtu(500) },
  },
  { rule: 'air.vent-high', fact: 'vent-height', limit: 5 * FOOT, sense: 'at-least' },
  {
    rule: 'air.cap-over-roof',
    fact: 'cap-over-roof',
    limit: 1.25 * FOOT,
    sense: 'at-least',
    also: { 'cap-least': 1.25 * FOOT },
  },
  {
    rule: 'air.flue-from-openings',
    fact: 'opening-distance',
    limit: 4 * FOOT,
    sense: 'at-least',
    also: wall,
  },
  {
    rule: 'air.flue-from-openings',
    fact: 'opening-distance',
    limit: 12 * INCH,
    sense: 'at-least',
    also: direct,
  },
  {
    rule: 'air.flue-from-openings',
    fact: 'opening-distance',
    limit: 9 * INCH,
    sense: 'at-least',
    also: { ...direct, input: kBtu(50) },
  },
  {
    rule: 'air.flue-from-openings',
    fact: 'opening-distance',
    limit: 6 * INCH,
    sense: 'at-least',
    also: { ...direct, input: kBtu(10) },
  },
  {
    rule: 'air.flue-from-openings',
    fact: 'opening-distance',
    limit: 10 * FOOT,
    sense: 'at-least',
    also: outdoors,
    profile: CANADA,
  },
  {
    rule: 'air.flue-from-openings',
    fact: 'opening-distance',
    limit: 3 * FOOT,
    sense: 'at-least',
    also: wall,
    profile: CANADA,
  },
  {
    rule: 'air.flue-from-openings',
    fact: 'opening-distance',
    limit: 12 * INCH,
    sense: 'at-least',
    also: { ...wall, input: kBtu(100) },
    profile: CANADA,
  },
  {
    rule: 'air.flue-from-inlet',
    fact: 'air-inlet-distance',
    limit: 10 * FOOT,
    sense: 'at-least',
    also: inlet,
  },
  {
    rule: 'air.flue-from-inlet',
    fact: 'terminal-over-inlet',
    limit: 3 * FOOT,
    sense: 'at-least',
    also: { terminal: 'above the roof', 'air-inlet-distance': 1 },
  },
  {
    rule: 'air.flue-from-inlet',
    fact: 'air-inlet-distance',
    limit: 6 * FOOT,
    sense: 'at-least',
    also: inlet,
    profile: CANADA,
  },
  { rule: 'air.terminal-over-ground', fact: 'terminal-height', limit: 12 * INCH, sense: 'at-least' },
  {
    rule: 'air.terminal-over-walkway',
    fact: 'terminal-height',
    limit: 7 * FOOT,
    sense: 'at-least',
    also: { 'public-walkway': 'yes' },
  },
];

describe('the limits of the air line', () => {
  it.each(LIMITS)('$rule at $limit', ({ rule, fact, limit, sense, also = {}, profile = US }) => {
    for (const [found, wanted] of around(limit, sense)) {
      const got = verdict(rule, { ...also, [fact]: found }, profile);
      if (wanted === 'tight or met') expect(['tight', 'meets']).toContain(got);
      else expect(got).toBe(wanted);
    }
  });

  it('knows each of its rules by a limit or a yes and no', () => {
    const words = ['air.vent-suits', 'air.no-chemicals'];
    const tested = new Set([...LIMITS.map((one) => one.rule), ...words]);
    expect(AIR_RULES.map((rule) => rule.id).filter((id) => !tested.has(id))).toEqual([]);
  });
});

describe('what is so or not', () => {
  it.each([
    ['condensing', 'sealed', 'meets'],
    ['condensing', 'type B', 'fails'],
    ['fan-assisted', 'type B', 'meets'],
    ['fan-assisted', 'single wall', 'fails'],
    ['atmospheric', 'single wall', 'meets'],
  ])('%s on %s', (venting, kind, wanted) => {
    expect(verdict('air.vent-suits', { venting, 'vent-kind': kind })).toBe(wanted);
  });

  it('chemicals stored', () => {
    expect(verdict('air.no-chemicals', { 'chemicals-stored': 'yes' })).toBe('fails');
    expect(verdict('air.no-chemicals', { 'chemicals-stored': 'no' })).toBe('meets');
  });
});

describe('what does not apply', () => {
  it('the distance of a vent above the roof to a window', () => {
    const roof = { ...wall, terminal: 'above the roof', 'opening-distance': 0.1 };
    expect(verdict('air.flue-from-openings', roof)).toBe('does not apply');
  });

  it('the height over a walkway where none is', () => {
    const none = { 'terminal-height': 0.1, 'public-walkway': 'no' };
    expect(verdict('air.terminal-over-walkway', none)).toBe('does not apply');
  });

  it('a least input for a straight vent', () => {
    expect(verdict('air.vent-stays-dry', { 'vent-least': 0, 'input-at-site': 1 })).toBe('does not apply');
  });

  it('the openings of the other country', () => {
    expect(verdict('air.supply-opening', { 'supply-opening-share': 2 }, US)).toBeUndefined();
    expect(verdict('air.combustion-air', { 'air-share': 2 }, CANADA)).toBeUndefined();
  });

  // 503.8: 1 ft above an opening is as good as 4 ft beside it, in the US.
  it('the distance beside an opening, a foot above it', () => {
    const above = { ...wall, 'terminal-over-opening': 1.2 * FOOT, 'opening-distance': 0.5 };
    expect(verdict('air.flue-from-openings', above, US)).toBe('meets');
    expect(verdict('air.flue-from-openings', above, CANADA)).toBe('fails');
  });
});
