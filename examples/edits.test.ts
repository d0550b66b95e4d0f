/** What a study keeps from before an edit is sound: job after job, it says what it says of the same job read afresh. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  type Edit,
  type FoldedDocument,
  Folding,
  jobViewOf,
  KeptStudy,
  operationsFromSurvey,
  type PlainJob,
  plainView,
  study,
  surveyRecords,
  toSurvey,
  writeGroup,
} from '@firstfire/job';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { exampleNames, FOLDER } from './make.ts';

const WRITER = { doc: 'd', replica: 'r', author: 'a', now: 0 };
const RUNS = process.env['FIRSTFIRE_FAST'] ? 2 : 6;

function foldingOf(name: string): Folding {
  const survey: unknown = JSON.parse(readFileSync(join(FOLDER, `${name}.survey.json`), 'utf8'));
  const records = surveyRecords(survey);
  const written = records.ok ? operationsFromSurvey(records.value, WRITER) : undefined;
  if (!written?.ok) throw new Error(name);
  const folding = new Folding(WRITER.doc);
  folding.take(written.operations);
  return folding;
}

/** Every reading of a job that is a number. */
function numbersIn(document: FoldedDocument): (Edit & { type: 'set' })[] {
  return [...document.collections].flatMap(([collection, elements]) =>
    [...elements.values()].flatMap(({ id: element, fields }) =>
      [...fields]
        .filter(([, { value }]) => typeof (value as { value?: unknown } | null)?.value === 'number')
        .map(([field, { value }]) => ({ type: 'set' as const, collection, element, field, value })),
    ),
  );
}

function edit(folding: Folding, place: number, factor: number): void {
  const document = folding.document();
  const places = numbersIn(document);
  const one = places[place % places.length];
  if (one === undefined) return;
  const reading = one.value as { value: number };
  const value = factor === 0 ? null : { ...reading, value: reading.value * factor };
  const written = writeGroup(document, [{ ...one, value }], WRITER);
  if (!written.ok) throw new Error(JSON.stringify(written.issues));
  folding.take(written.operations);
}

/** Another number, a little or far from the old one, or none at all. */
const change = fc.tuple(fc.nat(10_000), fc.constantFrom(0.99, 1.01, 1.3, 0.5, -1, 0));

it.each(exampleNames())('%s, edited a reading at a time', (name) => {
  fc.assert(
    fc.property(fc.array(change, { maxLength: 6 }), fc.boolean(), (changes, uncertainty) => {
      const folding = foldingOf(name);
      const options = { today: '2026-11-25', uncertainty };
      const kept = new KeptStudy();
      study(jobViewOf(folding.document()), { ...options, kept });
      for (const [place, factor] of changes) {
        edit(folding, place, factor);
        const document = folding.document();
        const afresh = plainView(structuredClone(toSurvey(document)) as PlainJob);
        expect(study(jobViewOf(document), { ...options, kept })).toEqual(study(afresh, options));
      }
    }),
    { numRuns: RUNS },
  );
});
