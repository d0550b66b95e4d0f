/**
 * Reads the rows of the vent tables.
 *
 * A row is written `height offset how | cells | cells …`: feet, feet, one letter a cell for how the cell is known
 * (r read in a public copy; f its fan-assisted figures read and the natural one from memory; m from memory), then the
 * groups of cells in thousands of Btu/h, `-` where the code allows none.
 */
import { air, quantity, type Source } from '@firstfire/engine';

const { BTU, FOOT, HOUR, INCH } = quantity;
const THOUSAND_BTU_PER_HOUR = (1000 * BTU) / HOUR;

/** How a cell is known. */
export type CellKnown = 'read' | 'fan figures read' | 'from memory';

const KNOWN: Readonly<Record<string, CellKnown>> = { r: 'read', f: 'fan figures read', m: 'from memory' };

export interface PrintedVentRow {
  /** ft. */
  readonly height: number;
  /** ft. */
  readonly offset: number;
  readonly known: readonly CellKnown[];
  /** Thousands of Btu/h by group and diameter. */
  readonly groups: readonly (readonly (number | undefined)[])[];
}

export interface PrintedVentTable {
  readonly id: string;
  readonly source: Source;
  /** in. */
  readonly inches: readonly number[];
  readonly straight: boolean;
  readonly rows: readonly PrintedVentRow[];
}

export function ventRows(text: string): readonly PrintedVentRow[] {
  return text.trim().split('\n').map(ventRow);
}

function ventRow(line: string): PrintedVentRow {
  const [head = '', ...groups] = line.split('|').map((part) => part.trim());
  const [height, offset, known = ''] = head.split(' ');
  return {
    height: Number(height),
    offset: Number(offset),
    known: [...known].map((letter) => KNOWN[letter] ?? 'from memory'),
    groups: groups.map((group) => group.split(' ').map((cell) => (cell === '-' ? undefined : Number(cell)))),
  };
}

/** One group of a printed table, in SI. */
export function ventTableOf(printed: PrintedVentTable, group: number): air.VentTable {
  const { id, source, inches, straight, rows } = printed;
  return air.ventTable({
    id: `${id}.${group}`,
    source,
    straight,
    diameters: inches.map((one) => one * INCH),
    rows: rows.map((row) => ({
      height: row.height * FOOT,
      offset: row.offset * FOOT,
      capacities: (row.groups[group] ?? []).map((cell) =>
        cell === undefined ? undefined : cell * THOUSAND_BTU_PER_HOUR,
      ),
    })),
  });
}
