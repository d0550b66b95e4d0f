/**
 * A vent beyond the end of its table, for a first estimate: the nearest vent the table holds, scaled by what the
 * chimney relation says of the two. At the table’s edge it is the table.
 *
 *     I = Itable(edge)·Irelation(vent)/Irelation(edge)
 *
 * The code does not allow its tables to be carried on: beyond them it asks for an engineered vent. What this gives is
 * for seeing whether one is worth asking for.
 *
 * Source: our own carrying on; it follows from the two it joins.
 * Range: the chimney relation’s. Errors: those of the table and of the relation.
 * Worked example: a vent inside the table → the table’s capacity.
 */
import { ok, type Recorder, type Result } from '../../trace/index.ts';
import { type VentPoint, type VentTable, ventTableCapacity } from './vent-table.ts';

export type VentRelation = (point: VentPoint) => Result<number>;

/** The nearest vent that the table holds. */
export function nearestInTable(table: VentTable, point: VentPoint): VentPoint {
  const heights = table.heights.map((one) => one.height);
  const height = within(point.height, heights);
  const around = [
    table.heights.findLast((one) => one.height <= height),
    table.heights.find((one) => one.height >= height),
  ];
  // The offset must stand in the rows of both heights around.
  const ends = around.map((one) => one?.rows.at(-1)?.offset ?? 0);
  const starts = around.map((one) => one?.rows[0]?.offset ?? 0);
  const offset = Math.max(Math.min(point.offset, ...ends), ...starts);
  return { diameter: within(point.diameter, table.diameters), height, offset };
}

function within(value: number, ends: readonly number[]): number {
  return Math.max(Math.min(value, ends.at(-1) ?? value), ends[0] ?? value);
}

/** Capacity beyond the table, W. */
export function beyondTable(
  table: VentTable,
  point: VentPoint,
  { relation, recorder }: { readonly relation: VentRelation; readonly recorder?: Recorder },
): Result<number> {
  const edge = nearestInTable(table, point);
  const printed = ventTableCapacity(table, edge, recorder);
  if (!printed.ok) return printed;
  const there = relation(point);
  if (!there.ok) return there;
  const atEdge = relation(edge);
  if (!atEdge.ok) return atEdge;
  const scale = there.value / atEdge.value;
  recorder?.given({ id: 'air.beyond-table', value: scale, kind: 'ratio' });
  return ok(printed.value * scale);
}
