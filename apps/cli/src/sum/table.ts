/**
 * A table of cases: one row in, one row out, in a stream, so that a million rows need no more memory than one.
 * The columns of the file are kept; outputs and an `issue` column are added.
 */
import { createReadStream } from 'node:fs';
import { type Readable, Transform, type TransformCallback } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { fail, type Issue, quantity, type Result } from '@firstfire/engine';
import type { AnySum } from '@firstfire/sums';
import { ENGLISH, fill, issueSentence } from '@firstfire/words';
import { CsvError, parse } from 'csv-parse';
import { stringify } from 'csv-stringify';
import { fileProblem } from '../job-file.ts';
import { showPlain } from '../print/value.ts';
import { Problem, problem } from '../problem.ts';
import type { World } from '../world.ts';
import { type Column, splitHead, unitNames } from './outputs.ts';
import { inRange, readInput, type Values } from './values.ts';

/** Columns of a table that lacks some which are named back. */
const MOST_NAMED = 12;
const PLAIN_NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

/** A table is for other programs: what stands in it is the same in every language. */
function tableSentence(issue: Issue): string {
  return issueSentence(issue, { words: ENGLISH, show: showPlain });
}

/** Reads one cell of one column. */
type CellReader = (text: string) => Result<number | string>;

interface TableColumn {
  readonly name: string;
  readonly read: CellReader;
}

export interface TableOptions {
  readonly sum: AnySum;
  readonly columns: readonly Column[];
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
      new SumRows(file, options),
      stringify(),
      process.stdout,
      { end: false },
    );
  } catch (error) {
    throw asProblem(error, file);
  }
}

class SumRows extends Transform {
  readonly #file: string;
  readonly #options: TableOptions;
  #columns: readonly (TableColumn | undefined)[] | undefined;

  constructor(file: string, options: TableOptions) {
    super({ objectMode: true });
    this.#file = file;
    this.#options = options;
  }

  override _flush(done: TransformCallback): void {
    const list = Object.keys(this.#options.sum.inputs).join(', ');
    done(this.#columns === undefined ? problem('cli.sum.table-empty', { file: this.#file, list }) : null);
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
    this.#refuseHead(row, this.#columns);
    return [...row, ...columns.map(({ name, unit }) => (unit === '1' ? name : `${name} [${unit}]`)), 'issue'];
  }

  #refuseHead(row: readonly string[], table: readonly (TableColumn | undefined)[]): void {
    const { sum } = this.#options;
    const names = table.flatMap((column) => column?.name ?? []);
    const twice = names.find((name, index) => names.indexOf(name) !== index);
    if (twice !== undefined) throw problem('cli.sum.table-twice', { file: this.#file, name: twice });
    const missing = Object.entries(sum.inputs)
      .filter(([name, input]) => !names.includes(name) && !input.optional && input.fallback === undefined)
      .map(([name]) => name);
    if (missing.length === 0) return;
    const there = row.slice(0, MOST_NAMED).join(', ').slice(0, 200);
    throw problem('cli.sum.table-lacks', {
      file: this.#file,
      sum: sum.name,
      missing: missing.join(', '),
      list: there,
    });
  }

  /** Cells that are missing are empty, so that outputs stand under their heads; too many cells are no case. */
  #case(row: readonly string[], table: readonly (TableColumn | undefined)[]): readonly (string | number)[] {
    const { sum, columns } = this.#options;
    const cells = table.map((_, index) => row[index] ?? '');
    const unsolved = (issue: string): readonly string[] => [...cells, ...columns.map(() => ''), issue];
    if (row.length > table.length)
      return unsolved(
        fill(ENGLISH.phrases['cli.sum.row-long'] ?? '', { cells: row.length, columns: table.length }),
      );
    const answer = solve(sum, cells, table);
    if (!answer.ok) return unsolved(answer.issues.map(tableSentence).join(' '));
    return [
      ...cells,
      ...columns.map((column) => rounded(answer.value[column.name] ?? Number.NaN, column)),
      '',
    ];
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
    throw problem('cli.sum.column-unit', { head, unit, name, list: unitNames(input.kind) });
  }
  return {
    name,
    read: (text) => {
      // The plain numbers of long tables are read the short way.
      if (!PLAIN_NUMBER.test(text)) return readInput(name, input, text, unit);
      const si = quantity.valueInSi(Number(text), unit, input.kind);
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
  if (error instanceof CsvError) return fileProblem(file, error.message);
  const known = ENGLISH.phrases[`file-${code}`] !== undefined;
  return known ? fileProblem(file, `file-${code}`) : error;
}
