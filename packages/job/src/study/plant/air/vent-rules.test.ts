/** What is asked of a vent beside its size, on rooms worked by hand. */
import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { figureOf, findingOf, type Survey, studyOf, withFields } from '../water/example-loop.ts';

const { BTU, HOUR, US_GALLON } = quantity;

const ROOM: Survey = {
  site: { country: 'US', altitude: 'drawing 0 ft', singleFamily: 'yes' },
  heaters: [
    {
      id: 'h1',
      name: 'Heater',
      planned: 'yes',
      fuel: 'natural',
      input: 'nameplate 100 kBtu/h',
      venting: 'nameplate atmospheric',
      flueOutlet: 'nameplate 6 in',
    },
  ],
  spots: [
    {
      id: 's1',
      heater: 'h1',
      where: 'told room',
      roomLength: 'measured 5 m',
      roomWidth: 'measured 4 m',
      roomHeight: 'measured 2.5 m',
      openingLow: 'measured 0 in2',
      openingHigh: 'measured 100 in2',
      openingTo: 'told outdoors',
      exhaustFan: 'told 0 cfm',
      ventKind: 'drawing type B',
      ventDiameter: 'drawing 6 in',
      ventHeight: 'drawing 10 ft',
      ventLateral: 'drawing 5 ft',
      terminal: 'drawing above the roof',
    },
  ],
};

const room = (fields: Readonly<Record<string, unknown>>): Survey => withFields(ROOM, 'spots/s1', fields);
const heater = (survey: Survey, fields: Readonly<Record<string, unknown>>): Survey =>
  withFields(survey, 'heaters/h1', fields);
const verdict = (survey: Survey, rule: string): string => findingOf(studyOf(survey), rule).verdict;

describe('everything that draws air out of the room', () => {
  const pull = (fields: Readonly<Record<string, unknown>>): number =>
    figureOf(room(fields), 'air.room-pull', 'h1');

  it('is the fans together: a dryer and a hood pull as an exhaust fan of their sum', () => {
    const together = pull({ exhaustFan: 'told 500 cfm' });
    expect(
      pull({ exhaustFan: 'told 100 cfm', dryerAir: 'told 150 cfm', hoodAir: 'told 250 cfm' }),
    ).toBeCloseTo(together, 9);
    expect(together).toBeGreaterThan(5 * pull({}));
  });

  it('pulls less at a room that a test found leaky, and is never less than its openings let in', () => {
    const fans = { exhaustFan: 'told 500 cfm' };
    expect(pull({ ...fans, airChanges: 'measured 5' })).toBeLessThan(
      pull({ ...fans, airChanges: 'measured 0.5' }),
    );
    // By hand: 535 cfm through 100 in2 and the cracks of 0.5 air changes of 50 m3, 0.0171 m2, air 1.225 kg/m3.
    const flow = (535 * quantity.CUBIC_FOOT) / 60;
    const cracks = (((20 * 0.5 * 50) / 3600) * 0.08 ** 0.65) / (0.61 * Math.sqrt(8 / 1.225));
    const area = 100 * quantity.INCH ** 2 + cracks;
    expect(pull({ ...fans, airChanges: 'measured 0.5' })).toBeCloseTo(
      (1.225 / 2) * (flow / (0.61 * area)) ** 2,
      1,
    );
  });

  // 10 ft of gas 300 °F above 60 °F air: 0.053 in w.c., 13 Pa; a hood of 1,200 cfm pulls far more.
  it('is held against all the draught the vent can have', () => {
    const draught = figureOf(ROOM, 'air.draught-left', 'h1');
    expect(draught).toBeGreaterThan(12);
    expect(draught).toBeLessThan(15);
    expect(verdict(ROOM, 'air.draught-left')).toBe('meets');
    expect(verdict(room({ hoodAir: 'told 1,200 cfm' }), 'air.draught-left')).toBe('fails');
  });

  it('counts against a fan that blows air in, which has to stop the burners', () => {
    const blown = { mechanicalAir: 'told 135 cfm', hoodAir: 'told 100 cfm' };
    expect(figureOf(room(blown), 'air.combustion-air', 'h1')).toBeCloseTo(1, 6);
    expect(verdict(room(blown), 'air.supply-interlock')).toBe('unknown');
    expect(verdict(room({ ...blown, supplyInterlock: 'measured no' }), 'air.supply-interlock')).toBe('fails');
    expect(verdict(ROOM, 'air.supply-interlock')).toBe('does not apply');
  });
});

describe('the openings of a room', () => {
  // One opening: 100 kBtu/h over 3000 are 33.3 in2; a vent of 8 in alone has 50.3 in2, and the opening is no smaller.
  it('as one alone are no smaller than the vents of the room', () => {
    const found = (diameter: string): number =>
      figureOf(room({ ventDiameter: diameter }), 'air.combustion-air', 'h1');
    const byVolume = 50 / (50 * 100 * quantity.CUBIC_FOOT);
    const rest = found('drawing 6 in') - 100 / (100 / 3);
    expect(rest).toBeCloseTo(byVolume, 6);
    expect(found('drawing 8 in')).toBeCloseTo(rest + 100 / (16 * Math.PI), 6);
  });

  it('as one alone ask for room around the heater', () => {
    const beside = {
      clearanceLeft: 'measured 1.5 in',
      clearanceRight: 'measured 10 in',
      clearanceBack: 'measured 10 in',
      clearanceFront: 'measured 6 in',
    };
    expect(figureOf(room(beside), 'air.one-opening-room', 'h1')).toBeCloseTo(1, 9);
    expect(verdict(room({ ...beside, clearanceLeft: 'measured 0.5 in' }), 'air.one-opening-room')).toBe(
      'fails',
    );
    expect(verdict(room({ ...beside, openingLow: 'measured 40 in2' }), 'air.one-opening-room')).toBe(
      'does not apply',
    );
  });

  it('by ducts ask of the ducts, and from other rooms of no intake', () => {
    const ducts = {
      openingTo: 'told outdoors by horizontal ducts',
      ductAlone: 'told no',
      ductRises: 'told no',
    };
    expect(verdict(room(ducts), 'air.duct-alone')).toBe('fails');
    expect(verdict(room(ducts), 'air.duct-rises')).toBe('fails');
    const vertical = { ...ducts, openingTo: 'told outdoors by vertical ducts' };
    expect(verdict(room(vertical), 'air.duct-rises')).toBe('does not apply');
    expect(verdict(ROOM, 'air.duct-alone')).toBe('does not apply');
    expect(verdict(room({ intakeHeight: 'measured 8 in' }), 'air.intake-high')).toBe('fails');
    const joined = { openingTo: 'told other rooms', joinedVolume: 'measured 100 m3' };
    for (const rule of ['air.intake-high', 'air.screen-mesh'])
      expect(verdict(room(joined), rule)).toBe('does not apply');
  });
});

describe('a vent of its own', () => {
  it('of a corrugated liner carries a fifth less than of type B', () => {
    const carried = (kind: string): number =>
      figureOf(room({ ventKind: `drawing ${kind}` }), 'air.vent-carries', 'h1');
    expect(carried('corrugated liner') / carried('type B')).toBeCloseTo(0.8, 9);
  });

  it('is asked its slope only where it is not upright', () => {
    expect(verdict(ROOM, 'air.vent-slope')).toBe('unknown');
    expect(verdict(room({ ventSlope: 'measured 1 %' }), 'air.vent-slope')).toBe('fails');
    expect(verdict(room({ ventLateral: 'drawing 0 ft' }), 'air.vent-slope')).toBe('does not apply');
  });

  it('of a single wall is kept out of the cold', () => {
    const single = { ventKind: 'drawing type B with single-wall connector' };
    expect(verdict(room({ ...single, singleWallCold: 'measured yes' }), 'air.single-wall-warm')).toBe(
      'fails',
    );
    expect(verdict(room({ singleWallCold: 'measured yes' }), 'air.single-wall-warm')).toBe('does not apply');
  });

  // 16 in over 6 in: 7.1 times the area.
  it('is no wider than seven times the outlet', () => {
    expect(figureOf(room({ ventDiameter: 'drawing 12 in' }), 'air.vent-not-wide', 'h1')).toBeCloseTo(4, 9);
    expect(verdict(room({ ventDiameter: 'drawing 16 in' }), 'air.vent-not-wide')).toBe('fails');
  });

  it('in a masonry chimney is sized by area and length, and no table is asked', () => {
    const masonry = { ventKind: 'drawing masonry chimney', chimneyArea: 'measured 50 in2' };
    // 50 over π/4·36.
    expect(figureOf(room(masonry), 'air.chimney-area', 'h1')).toBeCloseTo(50 / (9 * Math.PI), 9);
    expect(verdict(room(masonry), 'air.vent-carries')).toBe('does not apply');
    expect(figureOf(room(masonry), 'air.connector-length', 'h1')).toBeCloseTo(0.5, 9);
    expect(verdict(room({ ...masonry, ventLateral: 'drawing 8 ft' }), 'air.connector-length')).toBe('fails');
    const flat = studyOf(room({ ...masonry, ventHeight: 'drawing 0 ft' }));
    expect(findingOf(flat, 'air.connector-length').verdict).toBe('unknown');
    expect(flat.issues).toContainEqual(
      expect.objectContaining({ where: 'spots/s1/ventHeight', reason: 'vent-without-height' }),
    );
    expect(verdict(heater(room(masonry), { venting: 'nameplate fan-assisted' }), 'air.vent-suits')).toBe(
      'fails',
    );
  });
});

describe('a vent that several share', () => {
  const shared = (fields: Readonly<Record<string, unknown>>): number =>
    figureOf(
      room({ commonVent: 'V', commonDiameter: 'drawing 8 in', connectorRise: 'drawing 2 ft', ...fields }),
      'air.common-vent-carries',
      'h1',
    );

  // IFGC 504.3.4 and 504.3.6: a tenth off for a manifold, a tenth for each 90° elbow.
  it('carries less after a manifold and elbows', () => {
    expect(shared({ commonManifold: 'drawing yes' }) / shared({})).toBeCloseTo(0.9, 9);
    expect(shared({ commonFittings: { 'elbow-90': 2 } }) / shared({})).toBeCloseTo(0.8, 9);
    expect(
      shared({ commonManifold: 'drawing yes', commonFittings: { 'elbow-90': 1, 'elbow-45': 1 } }) /
        shared({}),
    ).toBeCloseTo(0.9 * 0.85, 9);
  });
});

describe('gas that condenses', () => {
  const WET = heater(
    room({
      ventKind: 'drawing sealed',
      terminal: 'drawing through the wall',
      ventMaterial: 'drawing polypropylene',
      ventListed: 'drawing yes',
      ventFittings: { 'elbow-90': 2, 'elbow-45': 2 },
      condensateDrain: 'drawing pump',
      condensateNeutral: 'drawing yes',
      condensateCapacity: 'nameplate 1 gph',
      publicWalkway: 'measured yes',
    }),
    {
      venting: 'nameplate condensing',
      ventCategory: 'nameplate IV',
      stackTemperature: 'nameplate 100 °F',
      ventLengthGreatest: 'nameplate 40 ft',
      ventElbow: 'nameplate 5 ft',
    },
  );

  it('leaves by a sealed vent that bears acid', () => {
    for (const rule of ['air.vent-category', 'air.vent-listed', 'air.vent-material'])
      expect(verdict(WET, rule), rule).toBe('meets');
    const zinc = withFields(WET, 'spots/s1', { ventMaterial: 'drawing galvanised steel' });
    expect(verdict(zinc, 'air.vent-material')).toBe('fails');
    const typeB = withFields(WET, 'spots/s1', { ventKind: 'drawing type B' });
    expect(verdict(typeB, 'air.vent-category')).toBe('fails');
  });

  // 5 + 10 ft, two elbows of 5 ft and two of half of that.
  it('by a vent as long as its maker counts it', () => {
    expect(figureOf(WET, 'air.vent-length', 'h1')).toBeCloseTo(30 * quantity.FOOT, 9);
  });

  // All the water of 100 kBtu/h is 1.13 gal/h; at 100 °F saturated gas still holds nearly a third of it.
  it('drops water that pump and neutraliser have to carry', () => {
    const needed = findingOf(studyOf(WET), 'air.condensate-capacity').outcome;
    const gallons = needed && 'required' in needed ? (needed.required * HOUR) / US_GALLON : Number.NaN;
    const all = (36.03e-3 / 890_600) * ((100_000 * BTU) / HOUR) * HOUR * (1 / 1000 / US_GALLON);
    expect(gallons).toBeLessThan(all);
    expect(gallons).toBeGreaterThan(0.6 * all);
    const small = withFields(WET, 'spots/s1', { condensateCapacity: 'nameplate 0.5 gph' });
    expect(verdict(small, 'air.condensate-capacity')).toBe('fails');
  });

  it('drips on nobody, freezes nowhere, and is asked once there is a drain', () => {
    expect(verdict(WET, 'air.condensate-off-walkway')).toBe('fails');
    expect(verdict(WET, 'air.condensate-frost')).toBe('unknown');
    const none = withFields(WET, 'spots/s1', { condensateDrain: 'drawing none' });
    expect(verdict(none, 'air.condensate-drained')).toBe('fails');
    expect(verdict(none, 'air.condensate-frost')).toBe('does not apply');
    expect(verdict(ROOM, 'air.condensate-drained')).toBe('does not apply');
  });

  it('ends in the wall below no soffit too near', () => {
    const low = withFields(WET, 'spots/s1', {
      terminalSoffit: 'measured 12 in',
      adjacentOpening: 'measured 12 ft',
    });
    expect(verdict(low, 'air.terminal-under-soffit')).toBe('fails');
    expect(verdict(low, 'air.flue-from-next-door')).toBe('meets');
  });
});
