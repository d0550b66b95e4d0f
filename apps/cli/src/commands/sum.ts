import type { Issue } from '@firstfire/engine';
import { type AnySum, SUMS } from '@firstfire/sums';
import { issueSentence, type Speech } from '@firstfire/words';
import { optionsOf } from '../options.ts';
import { describeSum, listSums } from '../print/sums.ts';
import { showIn, showUsual } from '../print/value.ts';
import { Problem, problem, STATUS, underEachOther } from '../problem.ts';
import { outputColumns } from '../sum/outputs.ts';
import { sumTable } from '../sum/table.ts';
import { readInputs } from '../sum/values.ts';
import type { World } from '../world.ts';

/** `sum`: lists, describes, works one case or a table. */
export async function sum(args: readonly string[], world: World): Promise<number> {
  const { values, positionals } = optionsOf(args, {
    csv: { type: 'string' },
    out: { type: 'string', multiple: true },
  });
  const [name, ...pairs] = positionals;
  if (name === undefined) {
    if (args.length > 0) throw problem('cli.usage.sum');
    world.out(listSums(SUMS, world.speech));
    return STATUS.good;
  }
  const found = SUMS.find((one) => one.name === name);
  if (found === undefined) {
    throw problem('cli.sum.none', { name, list: SUMS.map((one) => one.name).join(', ') });
  }
  const columns = outputColumns(found, values.out ?? []);
  if (values.csv !== undefined) {
    if (pairs.length > 0) throw problem('cli.sum.csv-alone');
    await sumTable(values.csv, { sum: found, columns }, world);
    return STATUS.good;
  }
  if (pairs.length === 0) {
    world.out(describeSum(found, world.speech));
    return STATUS.good;
  }
  return oneCase(found, { pairs, columns }, world);
}

interface OneCase {
  readonly pairs: readonly string[];
  readonly columns: ReturnType<typeof outputColumns>;
}

function oneCase(found: AnySum, { pairs, columns }: OneCase, world: World): number {
  const inputs = readInputs(found, texts(found, pairs));
  const answer = inputs.ok ? found.run(inputs.value) : inputs;
  if (!answer.ok) {
    throw new Problem(() => underEachOther(answer.issues.map((issue) => sentence(issue, world.speech))));
  }
  const width = Math.max(...columns.map((column) => column.name.length));
  for (const { name, unit, kind } of columns) {
    const si = answer.value[name] ?? Number.NaN;
    world.out(`${name.padEnd(width)}  ${showIn({ si, unit, kind }, world.speech)}`);
  }
  return STATUS.good;
}

function texts(found: AnySum, pairs: readonly string[]): Record<string, string> {
  const given = new Map<string, string>();
  for (const pair of pairs) {
    const equals = pair.indexOf('=');
    if (equals < 1) throw problem('cli.sum.pair', { pair, example: exampleOf(found) });
    const name = pair.slice(0, equals);
    if (given.has(name)) throw problem('cli.sum.twice', { name });
    given.set(name, pair.slice(equals + 1));
  }
  return Object.fromEntries(given);
}

function exampleOf(found: AnySum): string {
  const [name, value] = Object.entries(found.example.given)[0] ?? ['name', 'value'];
  return `'${name}=${value}'`;
}

function sentence(issue: Issue, speech: Speech): string {
  return issueSentence(issue, { words: speech.words, show: showUsual(speech) });
}
