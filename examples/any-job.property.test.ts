/** Any job yields findings without NaN or exception, and the findings behave as the physics does. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  fold,
  type JobView,
  jobViewOf,
  operationsFromSurvey,
  type Study,
  study,
  surveyRecords,
} from '@firstfire/job';
import type { Finding } from '@firstfire/reference';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleNames, FOLDER } from './make.ts';

type Fields = Record<string, unknown>;
type Records = Record<string, Fields | Fields[]>;

const RUNS = process.env['FIRSTFIRE_FAST'] ? 30 : 120;

function recordsOf(name: string): Records {
  const survey: unknown = JSON.parse(readFileSync(join(FOLDER, `${name}.survey.json`), 'utf8'));
  const records = surveyRecords(survey);
  if (!records.ok) throw new Error(name);
  return structuredClone(records.value) as Records;
}

function viewOf(records: Records): JobView {
  const written = operationsFromSurvey(records, { doc: 'd', replica: 'r', author: 'a', now: 0 });
  if (!written.ok) throw new Error(JSON.stringify(written.issues));
  return jobViewOf(fold(written.operations));
}

function quick(records: Records): Study {
  return study(viewOf(records), { today: '2026-11-25', uncertainty: false });
}

const EXAMPLES = exampleNames().map((name): [string, Records] => [name, recordsOf(name)]);

/** Every field of an example, as a place to damage. */
function placesOf(records: Records): [collection: string, index: number, field: string][] {
  return Object.entries(records).flatMap(([collection, part]) =>
    (Array.isArray(part) ? part : [part]).flatMap((fields, index) =>
      Object.keys(fields)
        .filter((field) => field !== 'id')
        .map((field): [string, number, string] => [collection, index, field]),
    ),
  );
}

function fieldsAt(records: Records, collection: string, index: number): Fields {
  const part = records[collection];
  return (Array.isArray(part) ? part[index] : part) ?? {};
}

/** Numbers of a finding that a person would see. */
function numbersOf(finding: Finding): number[] {
  const { outcome, margin, plusMinus } = finding;
  const seen =
    outcome === undefined ? [] : Object.values(outcome).filter((value) => typeof value === 'number');
  return [
    ...seen,
    ...(margin === undefined ? [] : [margin]),
    ...(plusMinus === undefined ? [] : [plusMinus]),
  ];
}

function expectSound(found: Study): void {
  for (const { findings } of found.lines) {
    for (const finding of findings) {
      const broken = numbersOf(finding).filter((value) => !Number.isFinite(value));
      expect(broken, finding.rule).toEqual([]);
    }
  }
}

/** What may stand in a field: nonsense of every sort, and numbers far from and near to sense. */
const nonsense = fc.oneof(
  fc.double({ noNaN: false }).map((value) => ({ value, unit: 'ft', how: 'measured' })),
  fc.constantFrom(0, -1, 1e-9, 1e9, 0.5, 40, 300).map((value) => ({ value, unit: 'psi', how: 'told' })),
  fc.string().map((value) => ({ value, how: 'assumed' })),
  fc.constantFrom<unknown>(
    {
      value: [
        [1, 1],
        [1, 1],
      ],
      unit: 'gpm, ft',
      how: 'told',
    },
    { value: {}, how: 'told' },
    7,
    'x',
    [],
    { how: 'told' },
  ),
);

describe.each(EXAMPLES)('%s', (_name, records) => {
  const places = placesOf(records);

  it('yields sound findings whatever is left out of it', () => {
    fc.assert(
      fc.property(fc.subarray(places, { maxLength: 12 }), (gone) => {
        const less = structuredClone(records);
        for (const [collection, index, field] of gone) delete fieldsAt(less, collection, index)[field];
        expectSound(quick(less));
      }),
      { numRuns: RUNS },
    );
  });

  it('yields sound findings whatever stands in a field', () => {
    fc.assert(
      fc.property(fc.constantFrom(...places), nonsense, ([collection, index, field], value) => {
        const other = structuredClone(records);
        fieldsAt(other, collection, index)[field] = value;
        expectSound(quick(other));
      }),
      { numRuns: RUNS },
    );
  });
});

describe('gas', () => {
  const house = recordsOf('house-pool');
  const STEEL = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2', '2-1/2', '3'];
  const margin = (found: Study, rule: string): number =>
    found.lines.flatMap((line) => line.findings).find((one) => one.rule === rule)?.margin ?? Number.NaN;
  const segments = house['gasSegments'] as Fields[];
  const steel = segments.flatMap((segment, index) => {
    const material = segment['material'] as { value: string };
    return material.value === 'steel-schedule-40' ? [index] : [];
  });

  it('a bigger pipe never lowers the pressure at the heater', () => {
    fc.assert(
      fc.property(fc.constantFrom(...steel), fc.nat({ max: STEEL.length - 2 }), (index, size) => {
        const of = (name: string | undefined): number => {
          const other = structuredClone(house);
          (other['gasSegments'] as Fields[])[index]!['size'] = { value: name, how: 'drawing' };
          return margin(quick(other), 'gas.burner-pressure-running');
        };
        expect(of(STEEL[size + 1])).toBeGreaterThanOrEqual(of(STEEL[size]) - 1e-6);
      }),
      { numRuns: RUNS },
    );
  });

  it('more load elsewhere never raises the pressure at the heater', () => {
    fc.assert(
      fc.property(fc.nat({ max: 5 }), fc.double({ min: 1, max: 4, noNaN: true }), (index, factor) => {
        const other = structuredClone(house);
        const input = (other['gasAppliances'] as Fields[])[index]!['input'] as { value: number };
        input.value *= factor;
        const before = margin(quick(house), 'gas.burner-pressure-running');
        expect(margin(quick(other), 'gas.burner-pressure-running')).toBeLessThanOrEqual(before + 1e-6);
      }),
      { numRuns: RUNS },
    );
  });
});
