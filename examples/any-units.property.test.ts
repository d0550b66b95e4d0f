/** The units a survey is written in change nothing: the same verdicts, margins and ± in whatever units of a kind. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { quantity } from '@firstfire/engine';
import {
  fold,
  type JobView,
  jobViewOf,
  operationsFromSurvey,
  RECORD_BY_COLLECTION,
  type Study,
  study,
  surveyRecords,
} from '@firstfire/job';
import { type Finding, findingId } from '@firstfire/reference';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleNames, FOLDER } from './make.ts';

interface Written {
  value: unknown;
  unit?: string;
  pm?: number;
  typed?: string;
}

type Fields = Record<string, Written>;
type Records = Record<string, Fields | Fields[]>;

const RUNS = process.env['FIRSTFIRE_FAST'] ? 3 : 10;
/** The code prints its factor Cr for one gravity to four digits: a last bit of 0.60 takes the equation for it. */
const MARGIN = 1e-4;

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

function whole(records: Records): Study {
  return study(viewOf(records), { today: '2026-11-25' });
}

/** Calls `change` with every quantity of a job, and its kind. */
function eachQuantity(records: Records, change: (reading: Written, kind: quantity.Kind) => void): void {
  for (const [collection, part] of Object.entries(records)) {
    const fields = RECORD_BY_COLLECTION.get(collection)?.fields ?? {};
    for (const record of Array.isArray(part) ? part : [part]) {
      for (const [name, reading] of Object.entries(record)) {
        const field = fields[name];
        if (field?.type === 'quantity' && typeof reading.value === 'number') change(reading, field.kind);
      }
    }
  }
}

function rewrite(reading: Written, kind: quantity.Kind, unit: string): void {
  const from = reading.unit ?? '1';
  const step = (one: string): number => quantity.si(1, one, kind) - quantity.si(0, one, kind);
  if (reading.pm !== undefined) reading.pm = (reading.pm * step(from)) / step(unit);
  reading.value = quantity.fromSi(quantity.si(Number(reading.value), from, kind), unit, kind);
  reading.unit = unit;
  delete reading.typed;
}

function byId(found: Study): ReadonlyMap<string, Finding> {
  return new Map(found.lines.flatMap((line) => line.findings).map((one) => [findingId(one), one]));
}

function expectSame(after: Study, before: Study): void {
  const [now, then] = [byId(after), byId(before)];
  expect([...now.keys()].sort()).toEqual([...then.keys()].sort());
  for (const [id, one] of then) {
    const other = now.get(id);
    expect(other?.verdict, id).toBe(one.verdict);
    for (const name of ['margin', 'plusMinus'] as const) {
      const was = one[name];
      if (was === undefined) continue;
      const off = Math.abs((other?.[name] ?? Number.NaN) - was) / Math.max(1, Math.abs(was));
      expect(off, `${id} ${name}`).toBeLessThan(MARGIN);
    }
  }
}

describe.each(exampleNames())('%s', (name) => {
  const records = recordsOf(name);
  const before = whole(records);

  it('says the same in any mixture of units', () => {
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat()), (picks) => {
        const other = structuredClone(records);
        eachQuantity(other, (reading, kind) => {
          const units = quantity.unitsOf(kind);
          const pick = picks.next().value ?? 0;
          rewrite(reading, kind, units[pick % units.length]?.id ?? '1');
        });
        const after = whole(other);
        expect(after.issues).toHaveLength(before.issues.length);
        expectSame(after, before);
      }),
      { numRuns: RUNS },
    );
  });
});
