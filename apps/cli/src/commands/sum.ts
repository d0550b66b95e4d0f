import type { Issue } from '@firstfire/engine';
import { type AnySum, SUMS } from '@firstfire/sums';
import { issueSentence, wordsOf } from '@firstfire/words';
import { optionsOf } from '../options.ts';
import { describeSum, listSums } from '../print/sums.ts';
import { showIn } from '../print/value.ts';
import { Problem, STATUS } from '../problem.ts';
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
    if (args.length > 0) throw new Problem('sum takes the name of a sum first; `firstfire sum` lists them.');
    world.out(listSums(SUMS));
    return STATUS.good;
  }
  const found = SUMS.find((one) => one.name === name);
  if (found === undefined) {
    throw new Problem(`there is no sum “${name}”. Sums: ${SUMS.map((one) => one.name).join(', ')}.`);
  }
  const columns = outputColumns(found, values.out ?? []);
  if (values.csv !== undefined) {
    if (pairs.length > 0)
      throw new Problem('with --csv every value stands in the table, in a column of its own.');
    await sumTable(values.csv, { sum: found, columns, sentence }, world);
    return STATUS.good;
  }
  if (pairs.length === 0) {
    world.out(describeSum(found));
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
  if (!answer.ok) throw new Problem(answer.issues.map(sentence).join('\n           '));
  const width = Math.max(...columns.map((column) => column.name.length));
  for (const { name, unit, kind } of columns) {
    world.out(`${name.padEnd(width)}  ${showIn(answer.value[name] ?? Number.NaN, unit, kind)}`);
  }
  return STATUS.good;
}

function texts(found: AnySum, pairs: readonly string[]): Record<string, string> {
  const given = new Map<string, string>();
  for (const pair of pairs) {
    const equals = pair.indexOf('=');
    if (equals < 1) throw new Problem(`“${pair}”: name=value is expected, such as ${exampleOf(found)}.`);
    const name = pair.slice(0, equals);
    if (given.has(name)) throw new Problem(`${name} is given twice; once is enough.`);
    given.set(name, pair.slice(equals + 1));
  }
  return Object.fromEntries(given);
}

function exampleOf(found: AnySum): string {
  const [name, value] = Object.entries(found.example.given)[0] ?? ['name', 'value'];
  return `'${name}=${value}'`;
}

function sentence(issue: Issue): string {
  return issueSentence(issue, { words: wordsOf('en'), show: showUsual });
}

function showUsual(value: number, kind: Issue['kind']): string {
  return kind === undefined ? String(value) : showIn(value, undefined, kind);
}
