import { randomBytes } from 'node:crypto';
import { existsSync, writeFileSync } from 'node:fs';
import { operationsFromSurvey, surveyRecords, writeJobFile } from '@firstfire/job';
import { fill, issueSentence, wordsOf } from '@firstfire/words';
import { textOf } from '../job-file.ts';
import { optionsOf } from '../options.ts';
import { showIn } from '../print/value.ts';
import { Problem, STATUS } from '../problem.ts';
import type { World } from '../world.ts';

/** `new FILE`: a job begun, blank or from a survey written as text. Never over a file that exists. */
export function create(args: readonly string[], world: World): number {
  const { values, positionals } = optionsOf(args, { from: { type: 'string' }, name: { type: 'string' } });
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0)
    throw new Problem('new takes one file to write: firstfire new FILE.');
  const path = world.path(name);
  if (existsSync(path)) throw new Problem(`${name} exists already; nothing was written.`);
  const survey =
    values.from === undefined
      ? { job: { name: values.name ?? name, stage: 'survey' } }
      : readSurvey(values.from, world);
  const records = surveyRecords(survey);
  if (!records.ok) throw new Problem(records.issues.map(sentence).join('\n           '));
  const written = operationsFromSurvey(records.value, writer());
  if (!written.ok) throw new Problem(written.issues.map(surveyText).join('\n           '));
  write(path, { name, text: writeJobFile(written.operations) });
  world.out(`${name}: a job with ${written.operations.length} operations. Next: firstfire check ${name}`);
  return STATUS.good;
}

/** Never over a file that exists, not even one that came between the look and the writing. */
function write(path: string, { name, text }: { readonly name: string; readonly text: string }): void {
  try {
    writeFileSync(path, text, { flag: 'wx' });
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? '';
    const { phrases } = wordsOf('en');
    const why = phrases[`file-write-${code}`] ?? `cannot be written (${code})`;
    throw new Problem(`${name}: ${why}; nothing was written.`);
  }
}

function readSurvey(name: string, world: World): unknown {
  try {
    return JSON.parse(textOf(name, world));
  } catch (error) {
    if (error instanceof Problem) throw error;
    throw new Problem(`${name}: is not JSON (${error instanceof Error ? error.message : String(error)}).`);
  }
}

/** Every device that writes has a replica id of its own, never shared. */
function writer() {
  const random = randomBytes(12).toString('hex');
  return {
    doc: `job-${random.slice(0, 12)}`,
    replica: `r${random.slice(12)}`,
    author: 'cli',
    now: Date.now(),
  };
}

function surveyText({ code, path }: { readonly code: string; readonly path: string }): string {
  return fill(wordsOf('en').issues[`survey.${code}`] ?? code, { where: path });
}

function sentence(issue: Parameters<typeof issueSentence>[0]): string {
  const show = (value: number, kind: typeof issue.kind): string =>
    kind === undefined ? String(value) : showIn(value, undefined, kind);
  return issueSentence(issue, { words: wordsOf('en'), show });
}
