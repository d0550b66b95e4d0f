/**
 * A table of cases: one row in, one row out, in a stream, so that a million rows need no more memory than one.
 * The columns of the file are kept; outputs and an `issue` column are added.
 */
import { createReadStream } from 'node:fs';
import { type Readable, Transform, type TransformCallback } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { fail, type Issue, quantity, type Result } from '@firstfire/engine';
import type { AnySum } from '@firstfire/sums';
import { parse } from 'csv-parse';
import { stringify } from 'csv-stringify';
import { Problem } from '../problem.ts';
import type { World } from '../world.ts';
import { type Column, splitHead } from './outputs.ts';
import { inRange, readInput, type Values } from './values.ts';

/** Reads one cell of one column. */
type CellReader = (text: string) => Result<number | string>;

interface TableColumn {
  readonly name: string;
  readonly read: CellReader;
}

export interface TableOptions {
  readonly sum: AnySum;
  readonly columns: readonly Column[];
  readonly sentence: (issue: Issue) => string;
}

export async function sumTable(file: string, options: TableOptions, world: World): Promise<void> {
  const input: Readable = file === '-' ? process.stdin : createReadStream(world.path(file));
  try {
    await pipeline(
      input,
      parse({
        bom: true,
        relax_column_count: true,
        skip_empty_lines: true,
        trim: true,
        max_record_size: 1_000_000,
      }),
      new SumRows(options),
      stringify(),
      process.stdout,
      { end: false },
    );
  } catch (error) {
    throw asProblem(error, file);
  }
}

class SumRows extends Transform {
  readonly #options: TableOptions;
  #columns: readonly (TableColumn | undefined)[] | undefined;

  constructor(options: TableOptions) {
    super({ objectMode: true });
    this.#options = options;
  }

  override _transform(row: readonly string[], _encoding: string, done: TransformCallback): void {
    try {
      done(null, this.#columns === undefined ? this.#head(row) : this.#case(row, this.#columns));
    } catch (error) {
      done(error instanceof Error ? error : new Error(String(error)));
    }
  }

  #head(row: readonly string[]): readonly string[] {
    const { sum, columns } = this.#options;
    this.#columns = row.map((head) => tableColumn(sum, head));
    const present = new Set(this.#columns.map((column) => column?.name));
    const missing = Object.entries(sum.inputs)
      .filter(([name, input]) => !present.has(name) && !input.optional && input.fallback === undefined)
      .map(([name]) => name);
    if (missing.length > 0)
      throw new Problem(`The table lacks columns that ${sum.name} needs: ${missing.join(', ')}.`);
    return [...row, ...columns.map(({ name, unit }) => (unit === '1' ? name : `${name} [${unit}]`)), 'issue'];
  }

  #case(row: readonly string[], table: readonly (TableColumn | undefined)[]): readonly (string | number)[] {
    const { sum, columns, sentence } = this.#options;
    const answer = solve(sum, row, table);
    if (!answer.ok) return [...row, ...columns.map(() => ''), answer.issues.map(sentence).join(' ')];
    return [...row, ...columns.map((column) => rounded(answer.value[column.name] ?? Number.NaN, column)), ''];
  }
}

function tableColumn(sum: AnySum, head: string): TableColumn | undefined {
  const { name, unit } = splitHead(head);
  const input = Object.hasOwn(sum.inputs, name) ? sum.inputs[name] : undefined;
  if (input === undefined) return undefined;
  if (unit === undefined || input.type === 'choice')
    return { name, read: (text) => readInput(name, input, text) };
  const probe = quantity.valueInSi(1, unit, input.kind);
  if (!probe.ok) {
    throw new Problem(
      `Column “${head}”: ${unit} is no unit of ${name}. Units: ${quantity
        .unitsOf(input.kind)
        .map((one) => one.id)
        .join(', ')}.`,
    );
  }
  return {
    name,
    read: (text) => {
      const value = Number(text);
      if (!Number.isFinite(value)) return readInput(name, input, text);
      const si = quantity.valueInSi(value, unit, input.kind);
      return si.ok ? inRange(name, input, si.value) : si;
    },
  };
}

function solve(
  sum: AnySum,
  row: readonly string[],
  table: readonly (TableColumn | undefined)[],
): Result<Readonly<Record<string, number>>> {
  const values: Record<string, number | string | undefined> = {};
  const issues: Issue[] = [];
  for (const [name, input] of Object.entries(sum.inputs)) {
    if (input.fallback !== undefined) values[name] = input.fallback;
  }
  table.forEach((column, index) => {
    const text = row[index] ?? '';
    if (column === undefined || text === '') return;
    const read = column.read(text);
    if (read.ok) values[column.name] = read.value;
    else issues.push(...read.issues);
  });
  for (const [name, input] of Object.entries(sum.inputs)) {
    if (values[name] !== undefined || input.optional) continue;
    if (!issues.some((issue) => issue.where === name))
      issues.push({ code: 'ill-formed', where: name, reason: 'input-missing' });
  }
  return issues.length > 0 ? fail(...issues) : sum.run(values as Values);
}

/** Twelve digits: more than any reading has, fewer than would show the machine's rounding. */
function rounded(si: number, { unit, kind }: Column): number {
  return Number(quantity.fromSi(si, unit, kind).toPrecision(12));
}

function asProblem(error: unknown, file: string): unknown {
  if (error instanceof Problem || !(error instanceof Error)) return error;
  const code = (error as NodeJS.ErrnoException).code ?? '';
  if (code === 'ENOENT') return new Problem(`${file}: there is no such file.`);
  if (code.startsWith('CSV_')) return new Problem(`${file}: ${error.message}`);
  return error;
}
