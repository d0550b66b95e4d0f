/**
 * A table of vent capacities, as the fuel-gas codes print them: by height, by lateral or connector rise, by nominal
 * diameter.
 *
 * Between the printed heights and offsets it goes in straight lines, as the code allows. It never goes beyond them. A
 * row of no lateral stands for a straight vent alone: any lateral counts at least as the next row. A cell that is not
 * allowed makes everything between it and its neighbours not allowed.
 *
 * Source: IFGC 504.2.3, 504.2.14 to 504.2.17 (read as NFPA 54-2012 13.2.27 to 13.2.30 in the 2013 California Plumbing
 * Code).
 * Range: what the table holds. Errors: `out-of-range` where it ends; `no-solution` with `vent-not-allowed` where the
 * code allows no such vent.
 * Worked example: 77 at 10 ft and 87 at 15 ft → 81 at 12 ft (IFGC appendix B, example 3).
 */
import { fail, type Issue, ok, type Recorder, type Result, type Source } from '../../trace/index.ts';

export interface VentRow {
  /** m. */
  readonly height: number;
  /** Lateral, or rise of the connector, m. */
  readonly offset: number;
  /** W for each diameter; undefined where not allowed. */
  readonly capacities: readonly (number | undefined)[];
}

interface VentHeight {
  readonly height: number;
  readonly rows: readonly VentRow[];
}

export interface VentTable {
  readonly id: string;
  readonly source: Source;
  /** Nominal, rising, m. */
  readonly diameters: readonly number[];
  /** Whether a row of no offset stands for straight vents only. */
  readonly straight: boolean;
  readonly heights: readonly VentHeight[];
}

export interface PrintedVentTable extends Omit<VentTable, 'heights'> {
  readonly rows: readonly VentRow[];
}

/** A table from its rows, in rising order of height and offset. */
export function ventTable({ rows, ...table }: PrintedVentTable): VentTable {
  const heights = [...new Set(rows.map((row) => row.height))].map((height) => ({
    height,
    rows: rows.filter((row) => row.height === height),
  }));
  return { ...table, heights };
}

export interface VentPoint {
  /** Of the vent as it is, m. */
  readonly diameter: number;
  /** m. */
  readonly height: number;
  /** m. */
  readonly offset: number;
}

/** Capacity, W; see the head of this file. */
export function ventTableCapacity(table: VentTable, point: VentPoint, recorder?: Recorder): Result<number> {
  const column = nominalColumn(table, point.diameter);
  const diameter = column === undefined ? undefined : table.diameters[column];
  if (column === undefined || diameter === undefined)
    return fail(outside('diameter', point.diameter, table.diameters));
  const found = atHeight(table, point, column);
  if (found.ok)
    recorder?.given({ id: 'air.vent-table', value: found.value, kind: 'heat-rate', source: table.source });
  return found;
}

/** A metric 150 mm counts as 6 in. */
const NOMINAL_SLACK = 1.02;

/** Column of the largest nominal diameter that is no larger than the vent. */
function nominalColumn({ diameters }: VentTable, diameter: number): number | undefined {
  const column = diameters.findLastIndex((one) => one <= diameter * NOMINAL_SLACK);
  return column < 0 ? undefined : column;
}

function atHeight(table: VentTable, { height, offset }: VentPoint, column: number): Result<number> {
  const { heights } = table;
  const above = heights.findIndex((one) => one.height >= height - SLACK);
  const upper = heights[above];
  const lower = heights[above - 1];
  const ends = heights.map((one) => one.height);
  if (upper === undefined) return fail(outside('height', height, ends));
  if (lower === undefined || upper.height <= height + SLACK)
    return upper.height <= height + SLACK
      ? atOffset(table, upper, { offset, column })
      : fail(outside('height', height, ends));
  const low = atOffset(table, lower, { offset, column });
  const high = atOffset(table, upper, { offset, column });
  if (!low.ok) return low;
  if (!high.ok) return high;
  const share = (height - lower.height) / (upper.height - lower.height);
  return ok(low.value + share * (high.value - low.value));
}

/** A reading of just a row is that row whatever its last digit, m. */
const SLACK = 1e-6;

interface Cell {
  readonly offset: number;
  readonly column: number;
}

function atOffset({ straight }: VentTable, { rows }: VentHeight, { offset, column }: Cell): Result<number> {
  const [first, second] = rows;
  const least = straight && offset > SLACK && first?.offset === 0 ? second?.offset : undefined;
  const at = Math.max(offset, least ?? offset);
  const beyond = rows.findIndex((row) => row.offset >= at - SLACK);
  const upper = rows[beyond];
  const lower = rows[beyond - 1];
  if (upper === undefined || (lower === undefined && upper.offset > at + SLACK))
    return fail(
      outside(
        'offset',
        offset,
        rows.map((row) => row.offset),
      ),
    );
  const high = upper.capacities[column];
  if (lower === undefined || upper.offset <= at + SLACK)
    return high === undefined ? fail(NOT_ALLOWED) : ok(high);
  const low = lower.capacities[column];
  if (low === undefined || high === undefined) return fail(NOT_ALLOWED);
  return ok(low + ((at - lower.offset) / (upper.offset - lower.offset)) * (high - low));
}

const NOT_ALLOWED: Issue = { code: 'no-solution', where: 'vent', reason: 'vent-not-allowed' };

function outside(where: string, found: number, values: readonly number[]): Issue {
  const min = Math.min(...values);
  const max = Math.max(...values);
  return { code: 'out-of-range', where, found, kind: where === 'diameter' ? 'diameter' : 'length', min, max };
}

/** Whether a result failed because the code allows no such vent. */
export function notAllowed(result: Result<number>): boolean {
  return !result.ok && result.issues.some((issue) => issue.reason === NOT_ALLOWED.reason);
}
