import { describe, expect, it } from 'vitest';
import { surveyRecords } from '../../schema/index.ts';
import { type PlainJob, plainView } from '../facts/plain-view.ts';
import { variantsOf, variantView } from '../facts/variant.ts';
import { type Study, study } from './study.ts';
import { workingOf } from './working.ts';

const TODAY = { today: '2026-11-25' };

/** A heater on one straight pipe: the gas line in its smallest form. */
const SMALL = {
  site: { country: 'US', altitude: 'measured 0 ft', singleFamily: 'yes' },
  heaters: [
    {
      id: 'h1',
      fuel: 'nameplate natural',
      node: 'heater',
      input: 'nameplate 137 kBtu/h',
      inletLeast: 'nameplate 6 in w.c.',
      inletGreatest: 'nameplate 10 in w.c.',
    },
  ],
  gasSupply: {
    fuel: 'told natural',
    heatingValue: 'told 1000 Btu/ft3',
    specificGravity: 'told 0.6',
    setPressure: 'measured 7 in w.c.',
    lockUpPressure: 'measured 8 in w.c.',
    regulatorCapacity: 'nameplate 1000 ft3/h',
    regulatorDroop: 'nameplate 0 in w.c.',
    meterBadge: 'nameplate 250 ft3/h',
    meterBadgeDrop: 'nameplate 0 in w.c.',
    designDrop: 'drawing 0.5 in w.c.',
  },
  gasSegments: [
    {
      id: 's1',
      from: 'supply',
      to: 'heater',
      material: 'steel-schedule-40',
      size: '3/4',
      length: 'measured 60 ft',
    },
  ],
};

function jobOf(survey: unknown): PlainJob {
  const records = surveyRecords(survey);
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return records.value as PlainJob;
}

function studyOf(survey: unknown): Study {
  return study(plainView(jobOf(survey)), TODAY);
}

function finding(found: Study, rule: string) {
  const one = found.lines.flatMap((line) => line.findings).find((each) => each.rule === rule);
  if (one === undefined) throw new Error(`no finding ${rule}`);
  return one;
}

describe('a gas run from survey to finding', () => {
  // NFPA 54 (older edition) example C.7.1 table row: 3/4 in, 60 ft, 0.5 in w.c. carries 137 ft3/h by the equation.
  it('carries by the code what the code’s own example says', () => {
    const { outcome } = finding(studyOf(SMALL), 'gas.section-capacity');
    if (outcome?.sense !== 'at-least') throw new Error('not at-least');
    expect(outcome.found / outcome.required).toBeCloseTo(1, 2);
  });

  it('loses by the code’s equation the half inch of that example', () => {
    const { outcome } = finding(studyOf(SMALL), 'gas.code-pressure');
    if (outcome?.sense !== 'at-least') throw new Error('not at-least');
    expect(outcome.found / 249.08891).toBeCloseTo(6.5, 2);
  });

  it('opens into the equation, its values and its section', () => {
    const working = workingOf(plainView(jobOf(SMALL)), 'gas.section-capacity@s1', TODAY);
    const text = JSON.stringify(working?.facts);
    expect(text).toContain('19.17');
    expect(text).toContain('Equation 4-1');
  });
});

describe('what is missing or wrong', () => {
  it('a missing length makes the pressure unknown, and leaves the meter known', () => {
    const [segment] = SMALL.gasSegments;
    const { length: _length, ...rest } = segment!;
    const found = studyOf({ ...SMALL, gasSegments: [rest] });
    expect(finding(found, 'gas.code-pressure')).toMatchObject({
      verdict: 'unknown',
      missing: ['gasSegments/s1/length'],
    });
    expect(finding(found, 'gas.meter-capacity').verdict).toBe('meets');
  });

  it.each([
    ['gasSegments', 'length', { value: -3, unit: 'ft', how: 'measured' }, 'out-of-range'],
    [
      'gasSegments',
      'length',
      { value: 3, unit: 'furlongs per fortnight', how: 'measured' },
      'not-understood',
    ],
    ['gasSegments', 'length', { value: Number.NaN, unit: 'ft', how: 'measured' }, 'not-finite'],
    ['gasSegments', 'size', { value: '7/8', how: 'measured' }, 'not-understood'],
    ['heaters', 'fuel', { value: 'coal', how: 'nameplate' }, 'not-understood'],
    [
      'heaters',
      'loss',
      {
        value: [
          [100, 20],
          [50, 4],
        ],
        unit: 'gpm, ft',
        how: 'nameplate',
      },
      'contradiction',
    ],
    ['heaters', 'input', 'four hundred', 'not-understood'],
  ])(
    '%s %s %j is an issue on that reading, and the rest is still checked',
    (collection, field, reading, code) => {
      const job = jobOf(SMALL);
      const [first] = job[collection] as readonly Record<string, unknown>[];
      const found = study(plainView({ ...job, [collection]: [{ ...first, [field]: reading }] }), TODAY);
      const issue = found.issues.find(
        (one) => one.where === `${collection}/${String(first?.['id'])}/${field}`,
      );
      expect(issue?.code).toBe(code);
      expect(finding(found, 'gas.fuel-matches')).toBeDefined();
      expect(finding(found, 'gas.meter-capacity')).toBeDefined();
    },
  );

  it('a wet site: humidity of 140 % is named, not used', () => {
    const job = jobOf({ ...SMALL, basins: [{ id: 'b1', use: 'pool' }] });
    const [basin] = job['basins'] as readonly Record<string, unknown>[];
    const humid = { value: 140, unit: '%', how: 'measured' };
    const found = study(plainView({ ...job, basins: [{ ...basin, airHumidity: humid }] }), TODAY);
    expect(found.issues).toContainEqual(
      expect.objectContaining({ code: 'out-of-range', where: 'basins/b1/airHumidity', max: 1 }),
    );
  });

  it('a loop is told for the code’s methods and still solved by the physical law', () => {
    const loop = [
      ...SMALL.gasSegments,
      {
        id: 's2',
        from: 'heater',
        to: 'supply',
        material: 'steel-schedule-40',
        size: '3/4',
        length: 'measured 80 ft',
      },
    ];
    const found = studyOf({ ...SMALL, gasSegments: loop });
    expect(finding(found, 'gas.code-pressure').verdict).toBe('unknown');
    const straight = finding(studyOf(SMALL), 'gas.burner-pressure-running');
    const looped = finding(found, 'gas.burner-pressure-running');
    expect(looped.margin ?? Number.NaN).toBeGreaterThan(straight.margin ?? Number.NaN);
  });

  it('a section that hangs on nothing is named', () => {
    const apart = [
      ...SMALL.gasSegments,
      { id: 's9', from: 'x', to: 'y', material: 'steel-schedule-40', size: '1', length: 'measured 1 ft' },
    ];
    const found = studyOf({ ...SMALL, gasSegments: apart });
    expect(found.issues).toContainEqual(expect.objectContaining({ reason: 'not-connected' }));
  });

  it('an empty job has findings to make, none of them met', () => {
    const found = studyOf({});
    expect(found.issues).toEqual([]);
    const verdicts = new Set(found.lines.flatMap((line) => line.findings.map((one) => one.verdict)));
    expect(verdicts.has('meets')).toBe(false);
    expect(verdicts.has('fails')).toBe(false);
  });
});

describe('an assumption', () => {
  it('stands in for what nobody read, and is shown as one', () => {
    const { heatingValue: _unread, ...supply } = SMALL.gasSupply;
    const found = finding(studyOf({ ...SMALL, gasSupply: supply }), 'gas.section-capacity');
    expect(found.verdict).not.toBe('unknown');
    expect(found.assumed).toContain('gasSupply/-/heatingValue');
  });
});

describe('a variant', () => {
  const withVariant = {
    ...SMALL,
    variants: [{ id: 'big', name: 'One size up' }],
    variantChanges: [
      { id: 'c1', variant: 'big', target: 'gasSegments/s1/size', reading: 'drawing 1' },
      { id: 'c2', variant: 'big', target: 'gasAppliances/grill/input', reading: 'nameplate 40 kBtu/h' },
      { id: 'c3', variant: 'big', target: 'gasAppliances/grill/node', reading: 'heater' },
      { id: 'c4', variant: 'other', target: 'gasSegments/s1/size', reading: 'drawing 1/2' },
    ],
  };
  const view = plainView(jobOf(withVariant));

  it('replaces readings and adds what only it has; the job itself stays as it was', () => {
    const changed = variantView(view, 'big');
    expect(variantsOf(view)).toEqual([{ id: 'big', name: 'One size up' }]);
    expect(changed.record('gasSegments', 's1').reading('size')?.value).toBe('1');
    expect(changed.all('gasAppliances').map((one) => one.id)).toEqual(['grill']);
    expect(view.all('gasAppliances')).toEqual([]);
    const before = finding(study(view, TODAY), 'gas.burner-pressure-running');
    const after = finding(study(changed, TODAY), 'gas.burner-pressure-running');
    expect(after.margin ?? Number.NaN).toBeGreaterThan(before.margin ?? Number.NaN);
  });

  it('that nobody named changes nothing', () => {
    expect(variantView(view, 'none')).toBe(view);
  });
});
