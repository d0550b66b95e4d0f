/**
 * The pattern of L in A = L·D·Lᵀ and the list of updates that make it, found once per topology. The numbers are
 * filled in by `SymmetricSystem` as often as the links change.
 *
 * Source: George and Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981, chapter 5 (elimination
 * tree and symbolic factorisation; from memory).
 */
import { minimumDegreeOrder, type Pairs } from './minimum-degree.ts';

export interface SymmetricStructure {
  readonly size: number;
  /** Place of each row in the elimination. */
  readonly place: Int32Array;
  /** Columns of L below the diagonal, by place: entries at `start[k]..start[k+1]`, each in row `row[p]`. */
  readonly start: Int32Array;
  readonly row: Int32Array;
  /**
   * Where the product of two entries of one column goes: for column after column, for each entry, for every later
   * entry of that column, the entry of L in the row of the later and the column of the earlier.
   */
  readonly target: Int32Array;
}

/** The structure of a matrix of `size` rows with off-diagonal entries at `pairs`. */
export function symmetricStructure(size: number, pairs: Pairs): SymmetricStructure {
  const place = inverse(minimumDegreeOrder(size, pairs));
  const columns = filledColumns(size, pairs, place);
  const start = new Int32Array(size + 1);
  columns.forEach((rows, k) => {
    start[k + 1] = start[k]! + rows.length;
  });
  const row = Int32Array.from(columns.flat());
  return { size, place, start, row, target: targets(start, row, columns) };
}

/** Where the entry of two rows (before ordering) stands in L; −1 where it has none. */
export function entryOf({ place, start, row }: SymmetricStructure, a: number, b: number): number {
  return find(start, row, Math.min(place[a]!, place[b]!), Math.max(place[a]!, place[b]!));
}

/** The entry of column `k` in row `i`, by halving: rows rise within a column. */
function find(start: Int32Array, row: Int32Array, k: number, i: number): number {
  let low = start[k]!;
  let high = start[k + 1]! - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    if (row[middle] === i) return middle;
    if (row[middle]! < i) low = middle + 1;
    else high = middle - 1;
  }
  return -1;
}

function inverse(order: Int32Array): Int32Array {
  const place = new Int32Array(order.length);
  order.forEach((row, step) => {
    place[row] = step;
  });
  return place;
}

/** Rows of each column of L: those of A, and those that earlier columns hand to their first row. */
function filledColumns(size: number, pairs: Pairs, place: Int32Array): number[][] {
  const sets = Array.from({ length: size }, () => new Set<number>());
  for (const [a, b] of pairs) {
    if (a === b) continue;
    const [i, j] = [place[a]!, place[b]!];
    sets[Math.min(i, j)]!.add(Math.max(i, j));
  }
  return sets.map((set) => {
    const rows = [...set].sort((x, y) => x - y);
    const [parent, ...others] = rows;
    if (parent !== undefined) for (const i of others) sets[parent]!.add(i);
    return rows;
  });
}

function targets(start: Int32Array, row: Int32Array, columns: readonly (readonly number[])[]): Int32Array {
  const count = columns.reduce((sum, rows) => sum + (rows.length * (rows.length - 1)) / 2, 0);
  const target = new Int32Array(count);
  let at = 0;
  for (const rows of columns)
    for (let a = 0; a < rows.length; a += 1)
      for (let b = a + 1; b < rows.length; b += 1) {
        target[at] = find(start, row, rows[a]!, rows[b]!);
        at += 1;
      }
  return target;
}
