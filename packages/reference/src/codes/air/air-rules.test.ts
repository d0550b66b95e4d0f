/** What the air line asks, and what it does not. Limits stand in `limits.table.ts`. */
import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { evaluateRules, type Fact, type FactBook, profileOf, type Subject } from '../../evaluate/index.ts';
import { AIR_RULES } from './index.ts';

const { BTU, FOOT, HOUR } = quantity;
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

const wall = { terminal: 'through the wall', 'terminal-over-opening': 0, input: kBtu(250) } as const;

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
