/**
 * A capacity table: what each size carries over each length, as a sizing method reads it. A length between two rows
 * is read on the longer one.
 *
 * Source: IFGC 2018 Appendix A.3 (the row at or next above the length). Errors: a length beyond the last row is
 * `out-of-range`.
 */
import { expectOk, fail, ok, type Result } from '../../trace/index.ts';
import { type Carrier, carrierCapacity } from '../code/carrier.ts';
import type { Fuel } from '../fuel.ts';

export interface TableSize {
  readonly id: string;
  readonly carrier: Carrier;
}

export interface CapacityTable {
  /** m, rising. */
  readonly lengths: readonly number[];
  /** Rising in capacity. */
  readonly sizes: readonly TableSize[];
  /** Standard m3/s: `flows[size][length]`. */
  readonly flows: readonly (readonly number[])[];
}

export interface TableBasis {
  /** Gauge, Pa. */
  readonly inletPressure: number;
  /** Pa. */
  readonly pressureDrop: number;
  readonly fuel: Fuel;
  /** Factor on the length before the equation: 1.2 in Canada's low-pressure tables, which so hold usual fittings. */
  readonly lengthFactor?: number;
}

/** Makes a table by the code's equation (or the corrugated tables), for sizes that no printed table was read for. */
export function capacityTable(
  sizes: readonly TableSize[],
  lengths: readonly number[],
  basis: TableBasis,
): Result<CapacityTable> {
  const { lengthFactor = 1, ...run } = basis;
  const cells = sizes.map(({ carrier }) =>
    lengths.map((length) => carrierCapacity({ ...run, carrier, length: length * lengthFactor })),
  );
  const issues = cells.flat().flatMap((cell) => (cell.ok ? [] : cell.issues));
  if (issues.length > 0) return fail(...issues);
  return ok({ lengths, sizes, flows: cells.map((row) => row.map(expectOk)) });
}

/** Index of the row a length (m) is read on. */
export function tableRow(table: CapacityTable, length: number): Result<number> {
  // A length that differs from a row by rounding alone is that row.
  const row = table.lengths.findIndex((one) => length <= one * (1 + 1e-9));
  if (row >= 0) return ok(row);
  return fail({
    code: 'out-of-range',
    where: 'length',
    found: length,
    max: table.lengths.at(-1) ?? 0,
    kind: 'length',
    reason: 'beyond-table',
  });
}

/** Index of the smallest size that carries a load on a row. */
export function smallestSize(table: CapacityTable, row: number, load: number): Result<number> {
  const size = table.flows.findIndex((flows) => (flows[row] ?? 0) >= load);
  if (size >= 0) return ok(size);
  return fail({
    code: 'no-solution',
    where: 'load',
    found: load,
    max: table.flows.at(-1)?.[row] ?? 0,
    kind: 'standard-gas-flow',
    reason: 'beyond-table',
  });
}
