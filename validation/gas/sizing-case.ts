/** What the published sizing examples share: a table made for them, a piping tree, and their printed sizes as cases. */
import { expectOk, gas, quantity } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case } from '../suite.ts';

const { BTU, FOOT, HOUR, STANDARD_CUBIC_FOOT } = quantity;

export const CFH = STANDARD_CUBIC_FOOT / HOUR;
export const MBH = (1000 * BTU) / HOUR;

/** Rows of the codes' tables, ft. */
export const TABLE_ROWS = [
  10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 125, 150, 175, 200, 250, 300, 350, 400, 450, 500,
].map((feet) => feet * FOOT);

/** Sizes of a pipe from one on, as the columns of a table. */
export function columns(pipe: catalog.gas.Pipe, from: string): gas.TableSize[] {
  const first = pipe.sizes.findIndex((size) => size.id === from);
  return pipe.sizes.slice(first).map(({ id, insideDiameter }) => ({
    id,
    carrier: { type: 'bore', insideDiameter },
  }));
}

/** Corrugated tubing of the sizes that an example has at hand. */
export function tubes(table: gas.CorrugatedTable, sizes: readonly number[]): gas.TableSize[] {
  return sizes.map((ehd) => ({ id: String(ehd), carrier: { type: 'corrugated', ehd, table } }));
}

export interface SizingExample {
  readonly sections: readonly gas.Section[];
  readonly sizes: readonly gas.TableSize[];
  readonly basis: gas.TableBasis;
  readonly rows?: readonly number[];
  readonly method?: gas.SizingMethod;
}

/** The example solved. */
export function solve(example: SizingExample): ReadonlyMap<string, gas.SizedSection> {
  const table = expectOk(gas.capacityTable(example.sizes, example.rows ?? TABLE_ROWS, example.basis));
  const tree = expectOk(gas.pipingTree(example.sections));
  const sized = expectOk(gas.sizePiping(tree, table, example.method ?? 'longest-length'));
  return new Map(sized.map((section) => [section.id, section]));
}

/** A trade size as a number of inches: `1-1/4` is 1.25; an EHD is itself. */
export function inches(size: string): number {
  return size.split('-').reduce((sum, part) => {
    const [over = '', under = '1'] = part.split('/');
    return sum + Number(over) / Number(under);
  }, 0);
}

/** One case a section: its printed size against ours, in inches (or EHD). */
export function sizeCases(
  example: string,
  printed: Readonly<Record<string, string>>,
  solved: () => ReadonlyMap<string, gas.SizedSection>,
): Case[] {
  return Object.entries(printed).map(([section, size]) => ({
    id: `${example} ${section}`,
    published: inches(size),
    computed: () => inches(solved().get(section)?.size ?? ''),
  }));
}

/** Shorthand of a section: id, feet, load in standard m3/s, the section that feeds it, sum of L/D. */
export function section(
  id: string,
  feet: number,
  load: number,
  more: { readonly upstream?: string; readonly fittings?: number } = {},
): gas.Section {
  return { id, length: feet * FOOT, load, ...more };
}

export const { STEEL_SCHEDULE_40, COPPER_TUBE, CSST_LOW_PRESSURE, CSST_TWO_PSI } = catalog.gas;
