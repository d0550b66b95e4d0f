/**
 * Bad input in a job file: each fault is a coded issue at the reading it stands in, the parts of the study that do not
 * need that reading say what they said before, and the command line prints a sentence and no stack.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  jobViewOf,
  operationsFromSurvey,
  readJobFile,
  type Study,
  study,
  surveyRecords,
  writeJobFile,
} from '@firstfire/job';
import { describe, expect, it } from 'vitest';
import { firstfire, temporaryFolder } from '../apps/cli/test/program/run.ts';
import { FOLDER } from './make.ts';

type Fields = Record<string, unknown>;
type Records = Record<string, Fields | Fields[]>;

const TODAY = { today: '2026-11-25', uncertainty: false };

function houseRecords(): Records {
  const survey: unknown = JSON.parse(readFileSync(join(FOLDER, 'house-pool.survey.json'), 'utf8'));
  const records = surveyRecords(survey);
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return structuredClone(records.value) as Records;
}

/** The job file of the house pool with some readings replaced, as text. */
function fileWith(changes: readonly Change[]): string {
  const records = houseRecords();
  for (const { collection, id, field, reading } of changes) {
    const part = records[collection];
    const fields = Array.isArray(part) ? part.find((one) => one['id'] === id) : part;
    if (fields === undefined) throw new Error(`${collection}/${id}`);
    fields[field] = reading;
  }
  const written = operationsFromSurvey(records, { doc: 'd', replica: 'r', author: 'a', now: 0 });
  if (!written.ok) throw new Error(JSON.stringify(written.issues));
  return writeJobFile(written.operations);
}

function studyOf(file: string, edition?: string): Study {
  const read = readJobFile(file);
  if (!read.ok) throw new Error(JSON.stringify(read));
  const options = edition === undefined ? TODAY : { ...TODAY, edition };
  return study(jobViewOf(read.value.document), options);
}

interface Change {
  readonly collection: string;
  readonly id: string;
  readonly field: string;
  readonly reading: unknown;
}

interface Bad {
  readonly name: string;
  readonly change: Change;
  readonly issue: { readonly code: string; readonly where: string; readonly reason?: string };
  /** Lines that the reading says something to; the others answer as before. */
  readonly touches: readonly string[];
  /** What the command line says of it. */
  readonly says: string;
}

const corners = (...value: readonly (readonly [number, number])[]): unknown => ({
  value,
  unit: 'ft, ft',
  how: 'drawing',
});

const plan = (id: string, reading: unknown): Change => ({
  collection: 'planObjects',
  id,
  field: 'corners',
  reading,
});

const told = (value: unknown, unit?: string): unknown => ({ value, how: 'told', ...(unit && { unit }) });

const BAD: readonly Bad[] = [
  {
    name: 'a house whose outline crosses itself',
    change: plan('house', corners([5, 30], [50, 46], [50, 30], [5, 46])),
    issue: {
      code: 'ill-formed',
      where: 'planObjects/house/corners',
      reason: 'outline-crosses-itself',
    },
    touches: ['place', 'air'],
    says: 'the outline crosses itself',
  },
  {
    name: 'a wall of no length',
    change: plan('screen', corners([50, 32], [50, 32])),
    issue: { code: 'ill-formed', where: 'planObjects/screen/corners', reason: 'edge-without-length' },
    touches: ['place', 'air'],
    says: 'a wall or an edge has no length',
  },
  {
    name: 'a heater outside the plan',
    change: { collection: 'spots', id: 'spot1', field: 'planX', reading: told(90, 'ft') },
    issue: { code: 'contradiction', where: 'spots/spot1/planX', reason: 'heater-outside-the-plan' },
    touches: ['place', 'air'],
    says: 'the heater stands beyond the property line of the plan',
  },
  {
    name: 'a unit that does not fit',
    change: { collection: 'heaters', id: 'h1', field: 'input', reading: told(333, 'psi') },
    issue: { code: 'not-understood', where: 'heaters/h1/input' },
    touches: ['heat', 'gas', 'air', 'water', 'place', 'power'],
    says: 'psi',
  },
  {
    name: 'a unit of a height where a depth is asked, spelt as nobody spells it',
    change: { collection: 'spots', id: 'spot1', field: 'padHeight', reading: told(4, 'inchies') },
    issue: { code: 'not-understood', where: 'spots/spot1/padHeight' },
    touches: ['place'],
    says: 'inchies',
  },
  {
    name: 'a number that is a text',
    change: { collection: 'site', id: '-', field: 'altitude', reading: told('high', 'ft') },
    issue: { code: 'not-understood', where: 'site/-/altitude' },
    touches: ['heat', 'gas', 'air', 'water', 'place'],
    says: 'high',
  },
  {
    name: 'an answer that is none of the choices',
    change: { collection: 'heaters', id: 'h1', field: 'sedimentTrap', reading: told('perhaps') },
    issue: { code: 'not-understood', where: 'heaters/h1/sedimentTrap' },
    touches: ['gas'],
    says: 'perhaps',
  },
  {
    name: 'a day that is none',
    change: { collection: 'job', id: '-', field: 'date', reading: told('2026-02-30') },
    issue: { code: 'not-understood', where: 'job/-/date', reason: 'day-expected' },
    touches: [],
    says: '2026-02-30',
  },
];

const GOOD = fileWith([]);
const good = studyOf(GOOD);

describe.each(BAD)('$name', ({ change, issue, touches, says }) => {
  const file = fileWith([change]);
  const found = studyOf(file);

  it('is an issue in its place', () => {
    expect(found.issues).toContainEqual(expect.objectContaining(issue));
    expect(good.issues).not.toContainEqual(expect.objectContaining(issue));
  });

  it('leaves the rest as it was', () => {
    for (const { line, findings } of found.lines) {
      const before = good.lines.find((one) => one.line === line)?.findings;
      if (!touches.includes(line)) expect(findings, line).toEqual(before);
      expect(findings.length, line).toBe(before?.length);
    }
    const answered = found.lines
      .flatMap(({ findings }) => findings)
      .filter((one) => one.verdict !== 'unknown');
    expect(answered.length).toBeGreaterThan(60);
  });

  it('is a sentence on the command line', () => {
    const path = join(temporaryFolder(), 'bad.job.json');
    writeFileSync(path, file);
    const { out, error, status } = firstfire(['check', path]);
    expect(out.replace(/\s+/g, ' ')).toContain(says);
    expect(error + out).not.toMatch(/^\s+at .*:\d+/m);
    expect(status).toBe(1);
  });
});

describe('an edition that does not exist', () => {
  it('is an issue, and the rules in force answer', () => {
    const found = studyOf(GOOD, 'IFGC 1066');
    expect(found.issues).toContainEqual(
      expect.objectContaining({
        code: 'not-understood',
        where: 'edition',
        found: 'IFGC 1066',
        reason: 'no-such-edition',
      }),
    );
    expect(found.lines).toEqual(good.lines);
    expect(found.profile).toEqual(good.profile);
  });

  it('is refused on the command line, with those that are carried', () => {
    const path = join(FOLDER, 'house-pool.job.json');
    const { error, status } = firstfire(['editions', path, '--from', 'IFGC 1066', '--to', 'IFGC 2018']);
    expect(error).toContain('IFGC 1066');
    expect(error).toContain('IFGC 2018');
    expect(status).toBe(2);
  });
});

describe('several faults at once', () => {
  it('are named each in its place', () => {
    const found = studyOf(fileWith(BAD.map(({ change }) => change)));
    // Where the wall is no wall and the house crosses itself, nobody asks where the heater stands on the plan.
    for (const { issue } of BAD.filter(({ issue: { reason } }) => reason !== 'heater-outside-the-plan'))
      expect(found.issues).toContainEqual(expect.objectContaining(issue));
  });
});
