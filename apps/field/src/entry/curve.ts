/** A curve while it is typed: rows of two texts, read into the pairs a reading holds. */
import { quantity } from '@firstfire/engine';
import type { Reading } from '@firstfire/job';
import { figureText } from './reading.ts';
import type { Given } from './use-quantity.ts';

export type DecimalMark = '.' | ',';

export interface Row {
  readonly x: string;
  readonly y: string;
}

export interface Axes {
  readonly kinds: readonly [quantity.Kind, quantity.Kind];
  readonly units: readonly [string, string];
}

export const EMPTY_ROW: Row = { x: '', y: '' };

/** A number as typed; undefined where it is none. */
export function numberIn(text: string, mark: DecimalMark): number | undefined {
  const read = quantity.parseQuantity(text.trim() || 'none', 'ratio', {
    defaultUnit: '1',
    decimal: mark === ',' ? 'comma' : 'point',
  });
  return read.ok && read.value.unit === '1' ? read.value.value : undefined;
}

export interface RowsRead {
  readonly points: readonly (readonly [number, number])[];
  /** Rows with something in them that is no pair of numbers. */
  readonly unclear: readonly number[];
}

export function rowsRead(rows: readonly Row[], mark: DecimalMark): RowsRead {
  const points: (readonly [number, number])[] = [];
  const unclear: number[] = [];
  rows.forEach((row, i) => {
    if (row.x.trim() === '' && row.y.trim() === '') return;
    const [x, y] = [numberIn(row.x, mark), numberIn(row.y, mark)];
    if (x === undefined || y === undefined) unclear.push(i);
    else points.push([x, y]);
  });
  return { points, unclear };
}

/** Points of a curve stand in rising order whatever order they were typed in; corners of an outline stay as they are. */
export function curveGiven(points: RowsRead['points'], { kinds, units }: Axes): Given | undefined {
  if (points.length === 0) return undefined;
  const value = kinds[0] === 'length' ? points : [...points].sort((a, b) => a[0] - b[0]);
  return { value, unit: units.join(', ') };
}

export function rowsOf(before: Reading | undefined, marks: quantity.NumberMarks | undefined): readonly Row[] {
  if (!Array.isArray(before?.value)) return [EMPTY_ROW, EMPTY_ROW, EMPTY_ROW];
  const points = before.value as readonly (readonly [number, number])[];
  return points.map(([x, y]) => ({ x: figureText(x, marks), y: figureText(y, marks) }));
}

/** The units a curve was given in; else those the trade prints curves in. */
export function unitsOfCurve(
  before: Reading | undefined,
  kinds: Axes['kinds'],
  system: quantity.UnitSystem,
): Axes['units'] {
  const [x, y] = (before?.unit ?? '').split(', ');
  const known = (unit: string | undefined, kind: quantity.Kind): string | undefined =>
    unit !== undefined && unit !== '' && quantity.parseQuantity(`1 ${unit}`, kind).ok ? unit : undefined;
  return [
    known(x, kinds[0]) ?? quantity.preferredUnit(kinds[0], system),
    known(y, kinds[1]) ?? quantity.preferredUnit(kinds[1], system),
  ];
}
