/**
 * Makes the example jobs from their written surveys: `npm run examples`. The same survey always gives the same file,
 * so a change of the log's form shows as a change of these files.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { operationsFromSurvey, surveyRecords, writeJobFile } from '@firstfire/job';

export const FOLDER = dirname(fileURLToPath(import.meta.url));

const SURVEY = '.survey.json';

export function exampleNames(): readonly string[] {
  return readdirSync(FOLDER)
    .filter((name) => name.endsWith(SURVEY))
    .map((name) => name.slice(0, -SURVEY.length))
    .sort();
}

/** The text of an example's job file. */
export function exampleFile(name: string): string {
  const survey: unknown = JSON.parse(readFileSync(join(FOLDER, name + SURVEY), 'utf8'));
  const records = surveyRecords(survey);
  if (!records.ok) throw new Error(`${name}: ${JSON.stringify(records.issues, undefined, 1)}`);
  const written = operationsFromSurvey(records.value, {
    doc: `example-${name}`,
    replica: 'example',
    author: 'example',
    now: Date.UTC(2026, 8, 14, 15),
  });
  if (!written.ok) throw new Error(`${name}: ${JSON.stringify(written.issues)}`);
  return writeJobFile(written.operations);
}

/** Writes every example's job file; the paths written. */
export function writeExamples(): readonly string[] {
  return exampleNames().map((name) => {
    const path = join(FOLDER, `${name}.job.json`);
    writeFileSync(path, exampleFile(name));
    return `examples/${name}.job.json`;
  });
}

if (import.meta.main) for (const path of writeExamples()) console.log(path);
