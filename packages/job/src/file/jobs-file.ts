/**
 * Many jobs in one file, such as everything a device has: the job files one after another, each whole as it would stand
 * alone. What counts as a change of the format stands in FORMAT.md.
 *
 *     { "format": "firstfire-jobs", "version": 1, "jobs": [ job file, … ] }
 */
import type { StoredOperation } from '../log/envelope.ts';
import { isJsonObject } from '../log/json.ts';
import { MAX_FILE_DEPTH, MAX_FILE_LENGTH } from './format.ts';
import { type FileIssue, type Place, Places } from './issue.ts';
import { valueEnd } from './lex.ts';
import { type JobFile, readJobFile } from './read.ts';
import { scanJson } from './scan.ts';
import { writeJobFile } from './write.ts';

export const JOBS_FORMAT = 'firstfire-jobs';
export const JOBS_VERSION = 1;
const JOBS_MEMBER = 'jobs';

/** Longest file of many jobs, characters. */
export const MAX_JOBS_LENGTH = 4 * MAX_FILE_LENGTH;

export type JobsFileResult =
  | { readonly ok: true; readonly jobs: readonly JobFile[] }
  | { readonly ok: false; readonly issues: readonly FileIssue[] };

/** One text for the logs in the order given. */
export function writeJobsFile(logs: Iterable<Iterable<StoredOperation>>): string {
  const files = [...logs].map((log) => writeJobFile(log).trimEnd());
  return [
    '{',
    `"format": ${JSON.stringify(JOBS_FORMAT)},`,
    `"version": ${JOBS_VERSION},`,
    `"${JOBS_MEMBER}": [${files.map((file) => `\n${file}`).join(',')}${files.length > 0 ? '\n' : ''}]`,
    '}\n',
  ].join('\n');
}

/** A file of many jobs, or one job file alone; of many, all are sound or the file is refused. */
export function readJobsFile(content: string, maxLength = MAX_JOBS_LENGTH): JobsFileResult {
  const text = content.startsWith('\uFEFF') ? content.slice(1) : content;
  if (text.length > maxLength)
    return refuse({ code: 'too-large', place: START, found: text.length, expected: maxLength });
  const scan = scanJson(text, MAX_FILE_DEPTH + 2, JOBS_MEMBER);
  if (!scan.ok || !isOfMany(text)) return alone(text);
  const places = new Places(text);
  const at = (member: string): Place => places.at(scan.offsets.members.get(member) ?? 0, member);
  const issue = headerIssue(JSON.parse(text) as Raw, at);
  return issue ? refuse(issue) : readEach(text, scan.offsets.log, places);
}

type Raw = { readonly [member: string]: unknown };

const START: Place = { line: 1, column: 1, path: '' };

function refuse(issue: FileIssue): JobsFileResult {
  return { ok: false, issues: [issue] };
}

function isOfMany(text: string): boolean {
  const raw: unknown = JSON.parse(text);
  return isJsonObject(raw) && raw['format'] === JOBS_FORMAT;
}

function alone(text: string): JobsFileResult {
  const read = readJobFile(text);
  return read.ok ? { ok: true, jobs: [read.value] } : read;
}

function headerIssue({ version, jobs }: Raw, at: (member: string) => Place): FileIssue | undefined {
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    const found = String(JSON.stringify(version) ?? 'nothing').slice(0, 80);
    return { code: 'wrong-version', place: at('version'), found, expected: JOBS_VERSION };
  }
  if (version > JOBS_VERSION) {
    return { code: 'newer-version', place: at('version'), found: version, expected: JOBS_VERSION };
  }
  return Array.isArray(jobs) ? undefined : { code: 'no-jobs', place: at(JOBS_MEMBER) };
}

function readEach(text: string, starts: readonly number[], places: Places): JobsFileResult {
  const jobs: JobFile[] = [];
  for (const [index, start] of starts.entries()) {
    const path = `${JOBS_MEMBER}[${index}]`;
    const within = (place: Place): Place => placeWithin(places.at(start, path), place);
    const read = readJobFile(text.slice(start, valueEnd(text, start)));
    if (!read.ok)
      return { ok: false, issues: read.issues.map((one) => ({ ...one, place: within(one.place) })) };
    const findings = read.value.findings.map((one) => ({ ...one, place: within(one.place) }));
    jobs.push({ ...read.value, findings });
  }
  return { ok: true, jobs };
}

/** A place of a job file that begins at `start` of a larger one. */
function placeWithin(start: Place, { line, column, path }: Place): Place {
  return {
    line: start.line + line - 1,
    column: line === 1 ? start.column + column - 1 : column,
    path: path === '' ? start.path : `${start.path}.${path}`,
  };
}
