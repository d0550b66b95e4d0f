/** One reading as the text of a table cell, and back: as a person would write it, the same in every language. */
import { type Issue, quantity } from '@firstfire/engine';
import { fieldFact, RECORD_BY_COLLECTION, type Reading } from '@firstfire/job';

export type CellRead =
  | { readonly state: 'empty' }
  | { readonly state: 'read'; readonly reading: Reading }
  | { readonly state: 'wrong'; readonly issues: readonly Issue[] };

export function cellText({ value, unit, typed }: Reading): string {
  if (typed !== undefined) return typed;
  if (typeof value === 'number')
    return unit === undefined || unit === '1' ? String(value) : `${value} ${unit}`;
  if (typeof value === 'string') return value;
  if (Array.isArray(value))
    return `${value.map((pair: readonly number[]) => pair.join(' ')).join('; ')} | ${unit ?? ''}`;
  return Object.entries(value)
    .map(([name, count]) => `${count} ${name}`)
    .join('; ');
}

/** Reads a cell as its field asks; what the field would not bear is wrong here too. */
export function readCell(collection: string, field: string, text: string): CellRead {
  const cell = text.trim();
  const spec = RECORD_BY_COLLECTION.get(collection)?.fields[field];
  if (cell === '' || spec === undefined) return { state: 'empty' };
  if (spec.type === 'quantity') return quantityCell(collection, field, { cell, kind: spec.kind });
  const value = spec.type === 'curve' ? curveIn(cell) : { value: cell };
  if (value === undefined)
    return wrong({ code: 'not-understood', where: field, found: cell, reason: 'points-expected' });
  return checked(collection, field, { ...value, how: 'nameplate' });
}

interface Cell {
  readonly cell: string;
  readonly kind: quantity.Kind;
}

function quantityCell(collection: string, field: string, { cell, kind }: Cell): CellRead {
  const read = quantity.parseQuantity(cell, kind, { where: field });
  if (!read.ok) return { state: 'wrong', issues: read.issues };
  const { value, unit } = read.value;
  const typed = cell === `${value} ${unit}` || cell === String(value) ? {} : { typed: cell };
  return checked(collection, field, { value, unit, how: 'nameplate', ...typed });
}

/** `30 1.2; 60 4.1 | gpm, ft`. */
function curveIn(cell: string): Pick<Reading, 'value' | 'unit'> | undefined {
  const [points = '', unit = ''] = cell.split('|');
  const value = points.split(';').map((pair) => pair.trim().split(/\s+/).map(Number));
  const isCurve = value.every((pair) => pair.length === 2 && pair.every(Number.isFinite));
  return isCurve
    ? { value: value as unknown as readonly (readonly [number, number])[], unit: unit.trim() }
    : undefined;
}

function checked(collection: string, field: string, reading: Reading): CellRead {
  const fact = fieldFact(collection, field, reading);
  return fact.state === 'wrong' ? { state: 'wrong', issues: fact.issues } : { state: 'read', reading };
}

function wrong(issue: Issue): CellRead {
  return { state: 'wrong', issues: [issue] };
}
