import { quantity } from '@firstfire/engine';
import { type Finding, profileOf } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { surveyRecords } from '../../../schema/index.ts';
import { type PlainJob, plainView } from '../../facts/plain-view.ts';
import type { JobView } from '../../facts/view.ts';
import { type Study, study } from '../../findings/study.ts';
import { workingOf } from '../../findings/working.ts';
import { yardOfJob } from '../../yard/index.ts';

const { FOOT, INCH } = quantity;
const TODAY = { today: '2026-10-01' };

function viewOf(survey: unknown): JobView {
  const records = surveyRecords(survey);
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return plainView(records.value as PlainJob);
}

function findings(found: Study): readonly Finding[] {
  return found.lines.find(({ line }) => line === 'place')?.findings ?? [];
}

function finding(survey: unknown, rule: string, subject: string): Finding {
  const one = findings(study(viewOf(survey), TODAY)).find(
    (each) => each.rule === rule && each.subject.id === subject,
  );
  if (one === undefined) throw new Error(`no finding ${rule}@${subject}`);
  return one;
}

const foundIn = ({ outcome }: Finding): number =>
  outcome !== undefined && 'found' in outcome ? outcome.found : Number.NaN;

const HEATER = {
  id: 'h1',
  fuel: 'nameplate natural',
  input: 'nameplate 250 kBtu/h',
  waterSide: 'nameplate left',
  width: 'nameplate 24 in',
  depth: 'nameplate 30 in',
  height: 'nameplate 36 in',
};
const SPOT = { id: 's1', where: 'told outdoors', padHeight: 'measured 4 in' };
const corners = (...points: readonly (readonly [number, number])[]) => ({
  value: points,
  unit: 'ft, ft',
  how: 'drawing',
});
const SQUARE = corners([0, 0], [40, 0], [40, 30], [0, 30]);

/** A yard of 40 ft by 30 ft, a house along its top, a pool, a pump, and the heater square in front of the house. */
const DRAWN = {
  site: { country: 'US', region: 'CO' },
  heaters: [HEATER],
  spots: [{ ...SPOT, planX: 'drawing 10 ft', planY: 'drawing 22 ft' }],
  planObjects: [
    { id: 'line', kind: 'drawing property line', corners: SQUARE },
    { id: 'house', kind: 'drawing building', corners: corners([2, 24], [30, 24], [30, 29], [2, 29]) },
    { id: 'window', kind: 'drawing opening', corners: corners([15, 24], [18, 24]) },
    { id: 'pool', kind: 'drawing pool', corners: corners([5, 4], [25, 4], [25, 14], [5, 14]) },
    { id: 'pump', kind: 'drawing pump', corners: corners([4, 22]) },
    { id: 'ac', kind: 'drawing air conditioner', corners: corners([13, 21], [15, 21], [15, 23], [13, 23]) },
  ],
};

const withObject = (object: Record<string, unknown>) => ({
  ...DRAWN,
  planObjects: [...DRAWN.planObjects, object],
});

describe('a heater on a plan', () => {
  // Taken off the drawing by hand: the box is 2 ft by 2.5 ft about (10, 22).
  it('has the distances of the drawing', () => {
    expect(foundIn(finding(DRAWN, 'place.usual-clearance', 'h1.back'))).toBeCloseTo(0.75 * FOOT, 9);
    expect(foundIn(finding(DRAWN, 'place.usual-clearance', 'h1.right'))).toBeCloseTo(2 * FOOT, 9);
    expect(foundIn(finding(DRAWN, 'place.air-conditioner', 'h1'))).toBeCloseTo(2 * FOOT, 9);
    expect(foundIn(finding(DRAWN, 'place.water-edge', 'h1'))).toBeCloseTo(6.75 * FOOT, 2);
    expect(foundIn(finding(DRAWN, 'place.connections-face', 'h1'))).toBeCloseTo(0, 9);
    expect(finding(DRAWN, 'place.not-under-deck', 'h1').verdict).toBe('meets');
  });

  it('is checked by the air line against the window drawn there', () => {
    const air = study(viewOf(DRAWN), TODAY).lines.find(({ line }) => line === 'air')?.findings;
    const window = air?.find(({ rule }) => rule === 'air.flue-from-openings');
    const across = Math.hypot(4, 0.75) * FOOT;
    expect(window && foundIn(window)).toBeCloseTo(across, 9);
  });

  it('is read at the spot where somebody measured there', () => {
    const measured = {
      ...DRAWN,
      spots: [{ ...DRAWN.spots[0], clearanceBack: 'measured 5 in', waterEdge: 'measured 7 ft' }],
    };
    expect(foundIn(finding(measured, 'place.usual-clearance', 'h1.back'))).toBeCloseTo(5 * INCH, 9);
    expect(finding(measured, 'place.usual-clearance', 'h1.back').verdict).toBe('fails');
    expect(foundIn(finding(measured, 'place.water-edge', 'h1'))).toBeCloseTo(7 * FOOT, 9);
  });

  it('counts a shrub as it will be', () => {
    const shrub = { id: 'shrub', kind: 'drawing shrub', corners: corners([7, 22]), growth: 'told 1 ft' };
    expect(foundIn(finding(withObject(shrub), 'place.usual-clearance', 'h1.left'))).toBeCloseTo(1 * FOOT, 9);
  });

  it('stands under a deck, on a walkway, in a sprinkler’s reach, where the plan shows it there', () => {
    const around = corners([5, 18], [15, 18], [15, 24], [5, 24]);
    const deck = { id: 'deck', kind: 'drawing deck', corners: around, bottom: 'drawing 9 ft' };
    expect(finding(withObject(deck), 'place.not-under-deck', 'h1').verdict).toBe('fails');
    expect(foundIn(finding(withObject(deck), 'place.usual-clearance', 'h1.above'))).toBeCloseTo(
      9 * FOOT - 40 * INCH,
      9,
    );
    const walkway = { id: 'way', kind: 'drawing walkway', corners: around };
    expect(finding(withObject(walkway), 'place.walkway', 'h1').verdict).toBe('fails');
    const head = { id: 'head', kind: 'drawing sprinkler', corners: corners([10, 15]), growth: 'told 8 ft' };
    expect(finding(withObject(head), 'place.sprinkler', 'h1').verdict).toBe('fails');
  });

  it('opens into the readings its place stands on', () => {
    const working = workingOf(viewOf(DRAWN), 'place.air-conditioner@h1', TODAY);
    expect(JSON.stringify(working?.facts)).toContain('spots/s1/planX');
  });
});

describe('a plan that cannot be', () => {
  const issuesOf = (survey: unknown) => study(viewOf(survey), TODAY).issues;

  it.each([
    [
      'a bow tie',
      { id: 'x', kind: 'drawing pool', corners: corners([0, 0], [4, 4], [4, 0], [0, 4]) },
      'outline-crosses-itself',
    ],
    [
      'a wall of no length',
      { id: 'x', kind: 'drawing wall', corners: corners([3, 3], [3, 3]) },
      'edge-without-length',
    ],
    [
      'a pool of two corners',
      { id: 'x', kind: 'drawing pool', corners: corners([3, 3], [5, 3]) },
      'too-few-corners',
    ],
  ])('%s is named, and what does not need the plan is still answered', (_name, object, reason) => {
    expect(issuesOf(withObject(object))).toContainEqual(
      expect.objectContaining({ reason, where: 'planObjects/x/corners' }),
    );
    expect(finding(withObject(object), 'place.base-height', 'h1').verdict).toBe('meets');
    expect(finding(withObject(object), 'place.air-conditioner', 'h1').verdict).toBe('unknown');
  });

  it('a top below its underside', () => {
    const wall = {
      id: 'x',
      kind: 'drawing wall',
      corners: corners([3, 3], [4, 3]),
      bottom: 'told 2 ft',
      top: 'told 1 ft',
    };
    expect(issuesOf(withObject(wall))).toContainEqual(
      expect.objectContaining({ code: 'contradiction', where: 'planObjects/x/top' }),
    );
  });

  it('a heater beyond its property line, or across it', () => {
    for (const planX of ['drawing 60 ft', 'drawing 40 ft']) {
      const outside = { ...DRAWN, spots: [{ ...DRAWN.spots[0], planX }] };
      expect(issuesOf(outside)).toContainEqual(
        expect.objectContaining({ reason: 'heater-outside-the-plan', where: 'spots/s1/planX' }),
      );
      expect(finding(outside, 'place.water-edge', 'h1').verdict).toBe('unknown');
    }
  });

  it('corners in a unit of another kind, a height that is no height', () => {
    const odd = [{ value: [[1, 1]], unit: 'psi, ft', how: 'drawing' }];
    const wall = { id: 'x', kind: { value: 'wall', how: 'drawing' }, corners: odd[0] };
    expect(issuesOf(withObject(wall))).toContainEqual(
      expect.objectContaining({ code: 'not-understood', where: 'planObjects/x/corners' }),
    );
    const high = {
      ...DRAWN,
      spots: [{ ...DRAWN.spots[0], padHeight: { value: 4, unit: 'km', how: 'told' } }],
    };
    expect(issuesOf(high)).toContainEqual(
      expect.objectContaining({ code: 'out-of-range', where: 'spots/s1/padHeight' }),
    );
  });
});

describe('clearances', () => {
  const measured = { ...SPOT, clearanceLeft: 'measured 20 in', clearanceRight: 'measured 8 in' };
  const bare = { heaters: [HEATER], spots: [measured] };
  const read = {
    heaters: [{ ...HEATER, clearanceWater: 'nameplate 24 in', clearanceFar: 'nameplate 6 in' }],
    spots: [measured],
  };

  it('go by the trade until the nameplate is read, then by the nameplate', () => {
    expect(finding(bare, 'place.usual-clearance', 'h1.left').verdict).toBe('meets');
    expect(finding(bare, 'place.clearance', 'h1.left')).toMatchObject({
      verdict: 'unknown',
      missing: ['heaters/h1/clearanceWater'],
    });
    expect(finding(read, 'place.usual-clearance', 'h1.left').verdict).toBe('does not apply');
    expect(finding(read, 'place.clearance', 'h1.left').verdict).toBe('fails');
    expect(finding(read, 'place.clearance', 'h1.right').verdict).toBe('meets');
  });

  it('ask on which side the water is', () => {
    const { waterSide: _unread, ...heater } = HEATER;
    expect(finding({ ...bare, heaters: [heater] }, 'place.usual-clearance', 'h1.left').missing).toContain(
      'heaters/h1/waterSide',
    );
  });
});

describe('what nobody has looked at, and what is not there', () => {
  const job = (near?: Record<string, number>) => ({
    heaters: [HEATER],
    spots: [{ ...SPOT, ...(near ? { near } : {}) }],
  });

  it('are three different things', () => {
    expect(finding(job(), 'place.air-conditioner', 'h1')).toMatchObject({
      verdict: 'unknown',
      missing: ['spots/s1/near'],
    });
    expect(finding(job({ 'air conditioner': 0 }), 'place.air-conditioner', 'h1').verdict).toBe(
      'does not apply',
    );
    expect(finding(job({ 'air conditioner': 1 }), 'place.air-conditioner', 'h1').missing).toEqual([
      'spots/s1/airConditionerDistance',
    ]);
  });

  it('an anchorage is asked for unless the weight is shown to hold', () => {
    expect(finding(job(), 'place.stands-in-wind', 'h1').missing).toContain('spots/s1/anchorage');
    const anchored = { heaters: [HEATER], spots: [{ ...SPOT, anchorage: 'measured listed' }] };
    expect(finding(anchored, 'place.stands-in-wind', 'h1').verdict).toBe('does not apply');
    const light = {
      ...job(),
      site: { windSpeed: 'told 115 mph' },
      heaters: [{ ...HEATER, mass: 'nameplate 160 lb' }],
    };
    expect(finding(light, 'place.stands-in-wind', 'h1').verdict).toBe('fails');
  });

  it('the sound at the line, by 6 dB for each doubling', () => {
    const loud = {
      site: { soundLimit: 'told 50 dB' },
      heaters: [{ ...HEATER, soundLevel: 'nameplate 60 dB', soundDistance: 'nameplate 3 ft' }],
      spots: [{ ...SPOT, propertyLine: 'measured 12 ft' }],
    };
    expect(foundIn(finding(loud, 'place.noise', 'h1'))).toBeCloseTo(60 - 40 * Math.log10(2), 9);
    const near = { ...loud, spots: [{ ...SPOT, propertyLine: 'measured 2 ft' }] };
    expect(finding(near, 'place.noise', 'h1')).toMatchObject({
      verdict: 'unknown',
      missing: ['heaters/h1/soundDistance'],
    });
  });

  it('indoors nothing of the yard', () => {
    const room = { heaters: [HEATER], spots: [{ id: 's1', where: 'told room' }] };
    for (const rule of [
      'place.setback',
      'place.water-edge',
      'place.sprinkler',
      'place.noise',
      'place.air-conditioner',
    ])
      expect(finding(room, rule, 'h1').verdict, rule).toBe('does not apply');
    expect(finding(room, 'place.pad', 'h1').verdict).toBe('unknown');
  });

  it('in a garage the flame above the floor', () => {
    const garage = {
      site: { country: 'US' },
      heaters: [HEATER],
      spots: [{ id: 's1', where: 'told garage', padHeight: 'measured 10 in' }],
    };
    expect(finding(garage, 'place.ignition-height', 'h1').verdict).toBe('fails');
  });
});

describe('connections that look away from the pump', () => {
  const away = (heater: Record<string, unknown>, more: readonly Record<string, unknown>[] = []) =>
    finding(
      {
        ...DRAWN,
        heaters: [{ ...HEATER, waterSide: 'nameplate right', ...heater }],
        planObjects: [...DRAWN.planObjects, ...more],
      },
      'place.connections-face',
      'h1',
    );
  const reason = ({ outcome }: Finding): unknown =>
    outcome !== undefined && 'because' in outcome ? outcome.because?.reason : undefined;

  it('are told what takes least to face it', () => {
    expect(away({}).verdict).toBe('fails');
    expect(reason(away({ waterSideMovable: 'nameplate yes' }))).toBe('face-by-header');
    // Front to the left: 1.75 ft behind it to the unit, 1 ft from its far side to the house.
    expect(reason(away({}))).toBe('face-by-turn');
    // A wall 1.5 ft to the left leaves no turned front its 2 ft.
    const wall = { id: 'wall', kind: 'drawing wall', corners: corners([7.5, 18], [7.5, 24]) };
    expect(reason(away({}, [wall]))).toBe('face-not-here');
    expect(reason(away({ waterSideMovable: 'nameplate yes' }, [wall]))).toBe('face-by-header');
  });

  it('are not asked of connections that face it', () => {
    expect(reason(finding(DRAWN, 'place.connections-face', 'h1'))).toBeUndefined();
  });
});

describe('the yard map of a job', () => {
  const US = profileOf({ country: 'US', region: 'CO' }, '2026-10-01');
  const CANADA = profileOf({ country: 'CA', region: 'QC' }, '2026-10-01');

  it('has a best spot that meets, and says so of none that fails', () => {
    const map = yardOfJob(viewOf(DRAWN), 'h1', { profile: US });
    if (!map.ok) throw new Error(JSON.stringify(map.issues));
    const { best } = map.value;
    if (best === undefined) throw new Error('no spot');
    expect(best.margin).toBeGreaterThan(0);
    const moved = {
      ...DRAWN,
      spots: [
        {
          ...SPOT,
          planX: { value: best.at.x, unit: 'm', how: 'drawing' },
          planY: { value: best.at.y, unit: 'm', how: 'drawing' },
          turn: { value: best.turn, unit: 'rad', how: 'drawing' },
        },
      ],
    };
    for (const rule of ['place.usual-clearance', 'place.air-conditioner', 'place.water-edge']) {
      const margins = findings(study(viewOf(moved), TODAY))
        .filter((one) => one.rule === rule)
        .map((one) => one.margin ?? Number.NaN);
      for (const margin of margins) expect(margin, rule).toBeGreaterThanOrEqual(best.margin - 1e-6);
    }
  });

  // By hand: a box about (21, 21) has its corner 2 ft beside the window and 1.75 ft before it.
  it('keeps 10 ft from a window in Canada and 4 ft in the US', () => {
    const at = (profile: typeof US): number => {
      const map = yardOfJob(viewOf(DRAWN), 'h1', { profile, step: 2 * FOOT });
      if (!map.ok) throw new Error(JSON.stringify(map.issues));
      return map.value.margins[10 * map.value.columns + 10] ?? Number.NaN;
    };
    expect(at(US)).toBeCloseTo(Math.hypot(2, 1.75) / 4 - 1, 9);
    expect(at(CANADA)).toBeCloseTo(Math.hypot(2, 1.75) / 10 - 1, 9);
  });

  // The corner of the box about (6, 16) is 3 ft from a tank at (10, 16).
  it('keeps a propane heater from the tank that is drawn, and no other', () => {
    const withTank = withObject({ id: 'tank', kind: 'drawing propane tank', corners: corners([10, 16]) });
    const at = (fuel: string): number => {
      const survey = { ...withTank, heaters: [{ ...HEATER, fuel: `nameplate ${fuel}` }] };
      const map = yardOfJob(viewOf(survey), 'h1', { profile: US, step: 4 * FOOT });
      if (!map.ok) throw new Error(JSON.stringify(map.issues));
      return map.value.margins[4 * map.value.columns + 1] ?? Number.NaN;
    };
    expect(at('propane')).toBeLessThan(-0.6);
    expect(at('natural')).toBeGreaterThan(at('propane'));
    const survey = { ...withTank, heaters: [{ ...HEATER, fuel: 'nameplate propane' }] };
    expect(foundIn(finding(survey, 'place.propane-tank', 'h1'))).toBeCloseTo(4.75 * FOOT, 9);
  });

  it('names what it lacks', () => {
    const map = yardOfJob(viewOf({ heaters: [{ id: 'h1' }] }), 'h1', { profile: US });
    if (map.ok) throw new Error('there is nothing to draw');
    expect(map.issues.map(({ where }) => where)).toEqual([
      'heaters/h1/width',
      'heaters/h1/depth',
      'heaters/h1/height',
      'planObjects',
    ]);
  });
});
