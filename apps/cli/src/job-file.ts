/** Reads a job from a file; whatever the file holds, the answer is a job or a problem with its place. */
import { readFileSync, statSync } from 'node:fs';
import { type Crowd, crowdOf, type FileIssue, type JobFile, MOST_RECORDS, readJobFile } from '@firstfire/job';
import { fill, wordsOf } from '@firstfire/words';
import { Problem } from './problem.ts';
import type { World } from './world.ts';

/** Longest file that is read into memory at all; the format's own limit is judged on its text. */
const LONGEST_FILE = 256 * 1024 * 1024;

export function loadJob(name: string, world: World): JobFile {
  const read = readJobFile(textOf(name, world));
  if (!read.ok)
    throw new Problem(read.issues.map((issue) => fileIssueText(name, issue)).join('\n           '));
  const crowd = crowdOf(read.value.document);
  if (crowd !== undefined) throw new Problem(`${name}: ${crowdText(crowd)}`);
  return read.value;
}

export function textOf(name: string, world: World): string {
  const path = world.path(name);
  try {
    const { size } = statSync(path);
    if (size > LONGEST_FILE) throw new Problem(`${name}: ${size} bytes are more than a job file ever has.`);
    return readFileSync(path, 'utf8');
  } catch (error) {
    if (error instanceof Problem) throw error;
    const code = (error as NodeJS.ErrnoException).code ?? '';
    throw new Problem(
      `${name}: ${fill(wordsOf('en').phrases[`file-${code}`] ?? 'cannot be read ({code})', { code })}.`,
    );
  }
}

function crowdText({ collection, count }: Crowd): string {
  return fill(wordsOf('en').phrases['crowd'] ?? '', { collection, count, most: MOST_RECORDS });
}

function fileIssueText(name: string, { code, place, found, expected }: FileIssue): string {
  const words = wordsOf('en').phrases;
  const path = place.path === '' ? '' : ` (${place.path})`;
  const text = fill(words[`file.${code}`] ?? code, { found: found ?? '', expected: expected ?? '' });
  return `${name}:${place.line}:${place.column}${path}: ${text}`;
}
