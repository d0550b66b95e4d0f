/** The library as a table: one row an item, one column a field. Read whole or not at all, each bad row named. */
import type { Issue } from '@firstfire/engine';
import { parse } from 'csv-parse/browser/esm/sync';
import { stringify } from 'csv-stringify/browser/esm/sync';
import { cellText, readCell } from './cells.ts';
import { EQUIPMENT, type EquipmentKind, type Item, isEquipment } from './library.ts';
import { equipmentFields } from './plate.ts';

/** A field that both kinds have stands in one column. */
const FIELDS: readonly string[] = [...new Set(EQUIPMENT.flatMap(equipmentFields))];

export const COLUMNS: readonly string[] = ['kind', 'name', ...FIELDS];

/** `escape_formulas` keeps a name such as `=1+1` a name when a spreadsheet opens it. */
export function tableOf(items: readonly Item[]): string {
  const rows = items.map(({ kind, name, readings }) => [
    kind,
    name,
    ...FIELDS.map((field) => {
      const reading = readings[field];
      return reading === undefined ? '' : cellText(reading);
    }),
  ]);
  return stringify([COLUMNS as string[], ...rows], { bom: true, escape_formulas: true });
}

export type RowFault =
  | { readonly fault: 'not-a-table'; readonly row: number }
  | { readonly fault: 'unknown-column'; readonly row: 1; readonly found: string }
  | { readonly fault: 'missing-column'; readonly row: 1; readonly found: string }
  | { readonly fault: 'unknown-kind'; readonly row: number; readonly found: string }
  | { readonly fault: 'no-name'; readonly row: number }
  | { readonly fault: 'twice'; readonly row: number; readonly found: string }
  | {
      readonly fault: 'not-of-kind';
      readonly row: number;
      readonly column: string;
      readonly kind: EquipmentKind;
    }
  | {
      readonly fault: 'cell';
      readonly row: number;
      readonly column: string;
      readonly kind: EquipmentKind;
      readonly issues: readonly Issue[];
    };

export type TableRead =
  | { readonly ok: true; readonly items: readonly Omit<Item, 'id'>[] }
  | { readonly ok: false; readonly faults: readonly RowFault[] };

export function readTable(text: string): TableRead {
  const rows = rowsOf(text);
  if (!Array.isArray(rows)) return { ok: false, faults: [rows as RowFault] };
  const [head = [], ...body] = rows as readonly (readonly string[])[];
  const columns = head.map((one) => one.trim());
  const headFaults = faultsOfHead(columns);
  if (headFaults.length > 0) return { ok: false, faults: headFaults };
  const faults: RowFault[] = [];
  const items = body.flatMap((cells, i) => itemIn({ columns, cells, row: i + 2 }, faults));
  faults.push(...doubles(items));
  if (faults.length > 0) return { ok: false, faults: faults.sort((a, b) => a.row - b.row) };
  return { ok: true, items: items.map(({ item }) => item) };
}

function rowsOf(text: string): readonly (readonly string[])[] | RowFault {
  try {
    const rows = parse(text, {
      bom: true,
      delimiter: delimiterOf(text),
      skip_empty_lines: true,
      relax_column_count: true,
    }) as unknown as string[][];
    return rows.length === 0 ? { fault: 'not-a-table', row: 1 } : rows;
  } catch (error) {
    const lines = (error as { lines?: unknown }).lines;
    return { fault: 'not-a-table', row: typeof lines === 'number' ? lines : 1 };
  }
}

/** Spreadsheets of places with a decimal comma part their columns by semicolons. */
function delimiterOf(text: string): string {
  const [head = ''] = text.split(/\r?\n/, 1);
  const count = (mark: string): number => head.split(mark).length;
  return [',', ';', '\t'].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}

function faultsOfHead(columns: readonly string[]): readonly RowFault[] {
  const unknown = columns.filter((one) => one !== '' && !COLUMNS.includes(one));
  const missing = ['kind', 'name'].filter((one) => !columns.includes(one));
  return [
    ...missing.map((found): RowFault => ({ fault: 'missing-column', row: 1, found })),
    ...unknown.map((found): RowFault => ({ fault: 'unknown-column', row: 1, found })),
  ];
}

interface Row {
  readonly columns: readonly string[];
  readonly cells: readonly string[];
  readonly row: number;
}

interface RowItem {
  readonly row: number;
  readonly item: Omit<Item, 'id'>;
}

function itemIn({ columns, cells, row }: Row, faults: RowFault[]): readonly RowItem[] {
  const cell = (column: string): string => plain(cells[columns.indexOf(column)] ?? '');
  const [kind, name] = [cell('kind'), cell('name')];
  if (!isEquipment(kind)) {
    faults.push({ fault: 'unknown-kind', row, found: kind });
    return [];
  }
  if (name === '') faults.push({ fault: 'no-name', row });
  const own = equipmentFields(kind);
  const readings: Record<string, Item['readings'][string]> = {};
  for (const column of columns) {
    const text = cell(column);
    if (text === '' || column === 'kind' || column === 'name') continue;
    if (!own.includes(column)) {
      faults.push({ fault: 'not-of-kind', row, column, kind });
      continue;
    }
    const read = readCell(kind, column, text);
    if (read.state === 'wrong') faults.push({ fault: 'cell', row, column, kind, issues: read.issues });
    else if (read.state === 'read') readings[column] = read.reading;
  }
  return [{ row, item: { kind, name, readings } }];
}

/** A text without the mark that kept it from being a formula. */
function plain(text: string): string {
  return text.trim().replace(/^'(?=[=+\-@\t\r])/, '');
}

function doubles(items: readonly RowItem[]): readonly RowFault[] {
  const seen = new Set<string>();
  return items.flatMap(({ row, item: { kind, name } }) => {
    const key = `${kind}/${name}`;
    if (name === '' || !seen.has(key)) {
      seen.add(key);
      return [];
    }
    return [{ fault: 'twice', row, found: name }];
  });
}
