import { describe, expect, it } from 'vitest';
import { findingOf, LOOP, type Survey, studyOf, withFields } from '../water/example-loop.ts';

type Fields = Readonly<Record<string, unknown>>;

/** NIOSH 94-110, example 1 at its destination, from memory: 14.5 lb with rounded factors, 14.15 lb without. */
const LIFT = {
  id: 'l1',
  by: 'told people',
  people: 'told 2',
  reach: 'measured 23 in',
  from: 'measured 15 in',
  to: 'measured 64 in',
  twist: 'measured 0 deg',
  grip: 'measured fair',
};

function lifted(fields: Fields, mass = 'nameplate 28 lb'): Survey {
  const weighed = withFields(LOOP, 'heaters/h1', { mass });
  return withFields({ ...weighed, lifts: [LIFT] }, 'lifts/l1', fields);
}

const of = (survey: Survey) => findingOf(studyOf(survey), 'place.lift');

describe('a heater that people lift', () => {
  it.each([
    ['nameplate 28.4 lb', 'fails'],
    ['nameplate 28.2 lb', 'tight'],
    ['nameplate 25 lb', 'meets'],
  ])('of %s between two %s', (mass, expected) => {
    expect(of(lifted({}, mass)).verdict).toBe(expected);
  });

  it('is judged where one may lift less: at the start or at the end', () => {
    const up = of(lifted({})).outcome;
    const down = of(lifted({ from: 'measured 64 in', to: 'measured 15 in' })).outcome;
    expect(down).toEqual(up);
  });

  it('fails where the manual recommends no weight at all', () => {
    expect(of(lifted({ reach: 'measured 30 in' })).verdict).toBe('fails');
  });

  it('does not apply where equipment bears it', () => {
    expect(of(lifted({ by: 'told equipment' })).verdict).toBe('does not apply');
  });

  it('asks for the weight and the lift', () => {
    expect(of(LOOP).missing).toEqual(
      expect.arrayContaining(['heaters/h1/mass', 'lifts/of-h1/people', 'lifts/of-h1/reach']),
    );
  });
});

describe('the way from the van to the pad', () => {
  const sized = { width: 'nameplate 30 in', depth: 'nameplate 40 in', mass: 'nameplate 200 lb' };
  const way = (fields: Fields, rule: string): string => {
    const survey = withFields(
      { ...withFields(LOOP, 'heaters/h1', sized), lifts: [LIFT] },
      'lifts/l1',
      fields,
    );
    return findingOf(studyOf(survey), rule).verdict;
  };

  // The narrower side, 30 in, and an inch for a hand on either side.
  it('lets the heater through on its narrower side', () => {
    expect(way({ wayWidth: 'measured 36 in' }, 'place.way-wide')).toBe('meets');
    expect(way({ wayWidth: 'measured 31 in' }, 'place.way-wide')).toBe('fails');
    expect(way({}, 'place.way-wide')).toBe('unknown');
  });

  it('is walked with the heater on firm ground, and by equipment on any', () => {
    expect(way({ ground: 'told steps' }, 'place.way-firm')).toBe('fails');
    expect(way({ by: 'told equipment' }, 'place.way-firm')).toBe('does not apply');
  });

  it('asks of equipment what it bears, and of people what they lift', () => {
    const cart = { by: 'told equipment', equipmentLoad: 'nameplate 150 lb' };
    expect(way(cart, 'place.equipment-bears')).toBe('fails');
    expect(way(cart, 'place.lift')).toBe('does not apply');
    expect(way({}, 'place.equipment-bears')).toBe('does not apply');
  });
});
