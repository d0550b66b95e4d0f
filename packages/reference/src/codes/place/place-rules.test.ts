/** What the trade keeps clear, and which edition asks. Limits stand in `limits.table.ts`. */
import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { evaluateRules, type Fact, type FactBook, profileOf, type Scope } from '../../evaluate/index.ts';
import { PLACE_RULES, USUAL_CLEARANCE } from './index.ts';

const { INCH } = quantity;
const US = profileOf({ country: 'US', region: 'CO' }, '2026-10-01');
const CALIFORNIA = profileOf({ country: 'US', region: 'CA' }, '2026-10-01');
const CANADA = profileOf({ country: 'CA', region: 'QC' }, '2026-10-01');

type Facts = Readonly<Record<string, number | string>>;

function finding(rule: string, facts: Facts, profile = US) {
  const fact = (name: string): Fact => {
    const value = facts[name.slice(name.indexOf('.') + 1)];
    if (value === undefined) return { state: 'unknown', missing: [name] };
    return typeof value === 'string'
      ? { state: 'word', value }
      : { state: 'number', value, kind: 'length', plusMinus: 0 };
  };
  const book: FactBook = {
    subjects: (scope: Scope) => [{ scope, id: 'h1', label: '' }],
    fact: (_subject, name) => fact(name),
  };
  return evaluateRules(
    PLACE_RULES.filter((one) => one.id === rule),
    book,
    profile,
  )[0];
}

it('the trade keeps 36 in above, 24 in in front, 12 in on the water side, 6 in behind and on the far side', () => {
  // Common practice, no source.
  const inches = { above: 36, front: 24, back: 6, water: 12, far: 6 };
  for (const [face, figure] of Object.entries(inches))
    expect(USUAL_CLEARANCE[face as keyof typeof inches]).toBeCloseTo(figure * INCH, 12);
});

describe('editions', () => {
  it('ask the property line in Canada alone, and cite the deck there', () => {
    const facts = { 'property-line-distance': 0.1, 'under-structure': 'yes' };
    expect(finding('place.property-line', facts, US)).toBeUndefined();
    expect(finding('place.not-under-deck', facts, CANADA)).toMatchObject({ edition: 'B149.1-20' });
    expect(finding('place.not-under-deck', facts, US)).toMatchObject({
      source: { known: 'common practice, no source' },
    });
  });

  it('read in an older one, or from memory, say check the book', () => {
    expect(
      finding('place.unlisted-clearance', { clearance: 1, listed: 'no' }, CALIFORNIA)?.checkTheBook,
    ).toBe(true);
    const then = profileOf({ country: 'US', region: 'CA' }, '2015-06-01');
    expect(finding('place.unlisted-clearance', { clearance: 1, listed: 'no' }, then)?.checkTheBook).toBe(
      false,
    );
    expect(finding('place.base-height', { 'ground-height': 1 }, US)?.checkTheBook).toBe(true);
  });
});
