/** Reads a job from a file; whatever the file holds, the answer is a job or a problem with its place. */
import { readFileSync, statSync } from 'node:fs';
import { crowdOf, type FileIssue, type JobFile, MOST_RECORDS, readJobFile } from '@firstfire/job';
import { type Dictionary, fill, type Slots } from '@firstfire/words';
import { Problem, underEachOther } from './problem.ts';
import type { World } from './world.ts';

/** Longest file that is read into memory at all; the format's own limit is judged on its text. */
const LONGEST_FILE = 256 * 1024 * 1024;

export function loadJob(name: string, world: World): JobFile {
  const read = readJobFile(textOf(name, world));
  if (!read.ok) {
    throw new Problem((words) =>
      underEachOther(read.issues.map((issue) => fileIssueText(name, issue, words))),
    );
  }
  const crowd = crowdOf(read.value.document);
  if (crowd !== undefined) throw new Problem((words) => crowdText(name, crowd, words));
  return read.value;
}

export function textOf(name: string, world: World): string {
  const path = world.path(name);
  try {
    const { size } = statSync(path);
    if (size > LONGEST_FILE) throw fileProblem(name, 'cli.file-longest', { size });
    return readFileSync(path, 'utf8');
  } catch (error) {
    if (error instanceof Problem) throw error;
    const { code = '' } = error as NodeJS.ErrnoException;
    throw unreadable(name, code);
  }
}

/** What is wrong with a file, told behind its name. */
export function fileProblem(file: string, phrase: string, slots: Slots = {}): Problem {
  return new Problem(({ phrases }) => {
    const text = fill(phrases[phrase] ?? phrase, slots);
    return fill(phrases['cli.file-problem'] ?? '', { file, text });
  });
}

/** A file that the system would not give. */
function unreadable(file: string, code: string): Problem {
  return new Problem(({ phrases }) => {
    const text = phrases[`file-${code}`] ?? fill(phrases['cli.file-unreadable'] ?? '', { code });
    return fill(phrases['cli.file-problem'] ?? '', { file, text });
  });
}

function crowdText(
  file: string,
  { collection, count }: { readonly collection: string; readonly count: number },
  { phrases }: Dictionary,
): string {
  const text = fill(phrases['crowd'] ?? '', { collection, count, most: MOST_RECORDS });
  return fill(phrases['cli.file-said'] ?? '', { file, text });
}

function fileIssueText(name: string, issue: FileIssue, { phrases }: Dictionary): string {
  const { code, place, found, expected } = issue;
  const path = place.path === '' ? '' : ` (${place.path})`;
  const text = fill(phrases[`file.${code}`] ?? code, { found: found ?? '', expected: expected ?? '' });
  return fill(phrases['cli.file-said'] ?? '', { file: `${name}:${place.line}:${place.column}${path}`, text });
}
