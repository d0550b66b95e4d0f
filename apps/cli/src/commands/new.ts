import { randomBytes } from 'node:crypto';
import { existsSync, writeFileSync } from 'node:fs';
import { operationsFromSurvey, surveyRecords, writeJobFile } from '@firstfire/job';
import { type Dictionary, fill, issueSentence, type Speech } from '@firstfire/words';
import { fileProblem, textOf } from '../job-file.ts';
import { onlyName, optionsOf } from '../options.ts';
import { showUsual } from '../print/value.ts';
import { Problem, problem, STATUS, underEachOther } from '../problem.ts';
import type { World } from '../world.ts';

/** `new FILE`: a job begun, blank or from a survey written as text. Never over a file that exists. */
export function create(args: readonly string[], world: World): number {
  const { values, positionals } = optionsOf(args, { from: { type: 'string' }, name: { type: 'string' } });
  const name = onlyName(positionals, problem('cli.usage.new'));
  const path = world.path(name);
  if (existsSync(path)) throw notWritten(name, 'EEXIST');
  const survey =
    values.from === undefined
      ? { job: { name: values.name ?? name, stage: 'survey' } }
      : readSurvey(values.from, world);
  const records = surveyRecords(survey);
  if (!records.ok) {
    throw new Problem(() => underEachOther(records.issues.map((issue) => sentence(issue, world.speech))));
  }
  const written = operationsFromSurvey(records.value, writer());
  if (!written.ok) {
    throw new Problem((words) => underEachOther(written.issues.map((issue) => surveyText(issue, words))));
  }
  write(path, { name, text: writeJobFile(written.operations) });
  const count = written.operations.length;
  world.out(fill(world.speech.words.phrases['cli.new-written'] ?? '', { file: name, count }));
  return STATUS.good;
}

/** Never over a file that exists, not even one that came between the look and the writing. */
function write(path: string, { name, text }: { readonly name: string; readonly text: string }): void {
  try {
    writeFileSync(path, text, { flag: 'wx' });
  } catch (error) {
    throw notWritten(name, (error as NodeJS.ErrnoException).code ?? '');
  }
}

function notWritten(file: string, code: string): Problem {
  return new Problem(({ phrases }) => {
    const text = phrases[`file-write-${code}`] ?? fill(phrases['cli.file-unwritable'] ?? '', { code });
    return fill(phrases['cli.not-written'] ?? '', { file, text });
  });
}

function readSurvey(name: string, world: World): unknown {
  try {
    return JSON.parse(textOf(name, world));
  } catch (error) {
    if (error instanceof Problem) throw error;
    throw fileProblem(name, 'cli.file-not-json', {
      text: error instanceof Error ? error.message : String(error),
    });
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

function surveyText(
  { code, path }: { readonly code: string; readonly path: string },
  { issues }: Dictionary,
): string {
  return fill(issues[`survey.${code}`] ?? code, { where: path });
}

function sentence(issue: Parameters<typeof issueSentence>[0], speech: Speech): string {
  return issueSentence(issue, { words: speech.words, show: showUsual(speech) });
}
