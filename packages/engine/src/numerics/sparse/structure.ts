/**
 * The pattern of L in A = L·D·Lᵀ, found once per topology; the numbers are filled in by `factorise` as often as
 * the links change.
 *
 * Source: T. A. Davis, Algorithm 849: a concise sparse Cholesky factorization package, ACM TOMS 31 (2005)
 * (from memory): elimination tree, row patterns, row-by-row numeric phase.
 */
import { minimumDegreeOrder, type Pairs } from './minimum-degree.ts';

export interface SymmetricStructure {
  readonly size: number;
  /** Place of each row in the elimination. */
  readonly place: Int32Array;
  /** Off-diagonal entries of A below the diagonal, by place: columns of row i at `start[i]..start[i+1]`. */
  readonly start: Int32Array;
  readonly column: Int32Array;
  /** Columns of L: rows at `lStart[k]..lStart[k+1]`. */
  readonly lStart: Int32Array;
  readonly lRow: Int32Array;
  /** Rows of L: columns at `rowStart[i]..rowStart[i+1]`, and where each entry stands in its column. */
  readonly rowStart: Int32Array;
  readonly rowColumn: Int32Array;
  readonly rowEntry: Int32Array;
}

/** The structure of a matrix of `size` rows with off-diagonal entries at `pairs`. */
export function symmetricStructure(size: number, pairs: Pairs): SymmetricStructure {
  const place = inverse(minimumDegreeOrder(size, pairs));
  const { start, column } = lowerRows(size, pairs, place);
  return { size, place, start, column, ...pattern(size, start, column) };
}

/** Where the entry of two rows stands in the values of A; −1 where the matrix has none. */
export function entryOf(structure: SymmetricStructure, a: number, b: number): number {
  const i = Math.max(structure.place[a]!, structure.place[b]!);
  const j = Math.min(structure.place[a]!, structure.place[b]!);
  const end = structure.start[i + 1]!;
  for (let p = structure.start[i]!; p < end; p += 1) if (structure.column[p] === j) return p;
  return -1;
}

function inverse(order: Int32Array): Int32Array {
  const place = new Int32Array(order.length);
  order.forEach((row, step) => {
    place[row] = step;
  });
  return place;
}

function lowerRows(size: number, pairs: Pairs, place: Int32Array) {
  const rows = Array.from({ length: size }, () => new Set<number>());
  for (const [a, b] of pairs) {
    if (a === b) continue;
    const [i, j] = [place[a]!, place[b]!];
    rows[Math.max(i, j)]!.add(Math.min(i, j));
  }
  return compress(rows.map((set) => [...set].sort((x, y) => x - y)));
}

function compress(lists: readonly (readonly number[])[]): { start: Int32Array; column: Int32Array } {
  const start = new Int32Array(lists.length + 1);
  lists.forEach((list, i) => {
    start[i + 1] = start[i]! + list.length;
  });
  return { start, column: Int32Array.from(lists.flat()) };
}

/** Row patterns by walking the elimination tree from each entry of A up to the row itself. */
function pattern(size: number, start: Int32Array, column: Int32Array) {
  const parent = new Int32Array(size).fill(-1);
  const seen = new Int32Array(size).fill(-1);
  const rows: number[][] = [];
  for (let i = 0; i < size; i += 1) {
    seen[i] = i;
    const found: number[] = [];
    for (let p = start[i]!; p < start[i + 1]!; p += 1) {
      for (let k = column[p]!; seen[k] !== i; k = parent[k]!) {
        if (parent[k] === -1) parent[k] = i;
        seen[k] = i;
        found.push(k);
      }
    }
    rows.push(found.sort((x, y) => x - y));
  }
  return columnsOf(size, rows);
}

function columnsOf(size: number, rows: readonly (readonly number[])[]) {
  const { start: rowStart, column: rowColumn } = compress(rows);
  const columns = Array.from({ length: size }, (): number[] => []);
  rows.forEach((row, i) => {
    for (const k of row) columns[k]!.push(i);
  });
  const { start: lStart, column: lRow } = compress(columns);
  const filled = Int32Array.from(lStart);
  const rowEntry = rowColumn.map((k) => {
    const entry = filled[k]!;
    filled[k] = entry + 1;
    return entry;
  });
  return { rowStart, rowColumn, rowEntry, lStart, lRow };
}
