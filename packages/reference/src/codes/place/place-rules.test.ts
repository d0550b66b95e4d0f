import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { evaluateRules, type Fact, type FactBook, profileOf, type Scope } from '../../evaluate/index.ts';
import { PLACE_RULES, USUAL_CLEARANCE } from './index.ts';

const { FOOT, INCH } = quantity;
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

interface Limit {
  readonly rule: string;
  readonly fact: string;
  readonly limit: number;
  readonly sense?: 'at-most';
  /** The rule's yardstick, where it is not the limit itself. */
  readonly yardstick?: number;
  readonly also?: Facts;
  readonly profile?: typeof US;
}

// Limits as the sections, or the trade, print them.
const LIMITS: readonly Limit[] = [
  {
    rule: 'place.clearance',
    fact: 'clearance',
    limit: 12 * INCH,
    also: { 'nameplate-clearance': 12 * INCH },
  },
  {
    rule: 'place.usual-clearance',
    fact: 'clearance',
    limit: 24 * INCH,
    also: { 'usual-clearance': USUAL_CLEARANCE.front },
  },
  {
    rule: 'place.unlisted-clearance',
    fact: 'clearance',
    limit: 12 * INCH,
    also: { listed: 'no' },
    profile: CALIFORNIA,
  },
  { rule: 'place.service-room', fact: 'service-room', limit: 30 * INCH },
  { rule: 'place.service-room', fact: 'service-room', limit: 30 * INCH, profile: CALIFORNIA },
  { rule: 'place.property-line', fact: 'property-line-distance', limit: 0.45, profile: CANADA },
  { rule: 'place.setback', fact: 'property-line-distance', limit: 5 * FOOT, also: { setback: 5 * FOOT } },
  { rule: 'place.air-conditioner', fact: 'air-conditioner-distance', limit: 24 * INCH },
  {
    rule: 'place.regulator-vent',
    fact: 'regulator-vent-distance',
    limit: 3 * FOOT,
    also: { fuel: 'natural' },
  },
  {
    rule: 'place.regulator-vent',
    fact: 'regulator-vent-distance',
    limit: 5 * FOOT,
    also: { fuel: 'propane' },
  },
  { rule: 'place.electrical-space', fact: 'electrical-distance', limit: 3 * FOOT },
  { rule: 'place.water-edge', fact: 'water-edge-distance', limit: 5 * FOOT },
  { rule: 'place.propane-tank', fact: 'tank-distance', limit: 10 * FOOT },
  { rule: 'place.base-height', fact: 'ground-height', limit: 3 * INCH },
  { rule: 'place.base-height', fact: 'ground-height', limit: 3 * INCH, profile: CALIFORNIA },
  { rule: 'place.ignition-height', fact: 'garage-height', limit: 18 * INCH },
  {
    rule: 'place.above-flood',
    fact: 'base-height',
    limit: 2 * FOOT,
    yardstick: FOOT,
    also: { 'flood-level': 2 * FOOT },
  },
  {
    rule: 'place.above-snow',
    fact: 'base-height',
    limit: 1 * FOOT,
    yardstick: FOOT,
    also: { height: 3 * FOOT, 'snow-depth': 3 * FOOT },
  },
  { rule: 'place.stands-in-wind', fact: 'standing-share', limit: 1 },
  { rule: 'place.connections-face', fact: 'connections-angle', limit: Math.PI / 2, sense: 'at-most' },
  {
    rule: 'place.noise',
    fact: 'sound-at-line',
    limit: 55,
    sense: 'at-most',
    yardstick: 10,
    also: { 'sound-limit': 55 },
  },
];

describe('the limits of the place line', () => {
  it.each(LIMITS)(
    '$rule at $limit',
    ({ rule, fact, limit, sense, yardstick = limit, also = {}, profile = US }) => {
      const right = sense === 'at-most' ? -1 : 1;
      const verdictAt = (share: number) =>
        finding(rule, { ...also, [fact]: limit + right * share * yardstick }, profile)?.verdict;
      expect(verdictAt(-0.001)).toBe('fails');
      expect(['tight', 'meets']).toContain(verdictAt(1e-9));
      expect(verdictAt(0.2)).toBe('meets');
      expect(finding(rule, also, profile)?.verdict).toBe('unknown');
    },
  );

  it.each([
    ['place.pad', 'pad', 'none', 'concrete'],
    ['place.not-under-deck', 'under-structure', 'yes', 'no'],
    ['place.hot-surfaces', 'hot-surfaces-guarded', 'no', 'yes'],
    ['place.sprinkler', 'sprinkler', 'yes', 'no'],
    ['place.walkway', 'on-walkway', 'yes', 'no'],
  ])('%s', (rule, fact, wrong, right) => {
    expect(finding(rule, { [fact]: wrong })?.verdict).toBe('fails');
    expect(finding(rule, { [fact]: right })?.verdict).toBe('meets');
    expect(finding(rule, {})?.verdict).toBe('unknown');
  });

  it('are those of every rule', () => {
    const yesNo = [
      'place.pad',
      'place.not-under-deck',
      'place.hot-surfaces',
      'place.sprinkler',
      'place.walkway',
    ];
    const tested = new Set([...LIMITS.map((one) => one.rule), ...yesNo]);
    expect(PLACE_RULES.map((rule) => rule.id).filter((id) => !tested.has(id))).toEqual([]);
  });
});

describe('what does not apply', () => {
  it.each([
    ['place.clearance', { clearance: 1, 'nameplate-clearance': 0 }],
    ['place.setback', { 'property-line-distance': 1, setback: 0 }],
    ['place.above-snow', { 'base-height': 0, height: 1, 'snow-depth': 0 }],
  ] as [string, Facts][])('%s where nothing is asked', (rule, facts) => {
    expect(finding(rule, facts)?.verdict).toBe('does not apply');
  });

  it('the rule for unlisted heaters, to a listed one', () => {
    const facts = { clearance: 0.1, listed: 'yes' };
    expect(finding('place.unlisted-clearance', facts, CALIFORNIA)?.verdict).toBe('does not apply');
  });
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
