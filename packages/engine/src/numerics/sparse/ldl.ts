/**
 * A sparse symmetric linear system, filled and solved again and again: A = L·D·Lᵀ column by column, with the
 * right-hand side carried along. No allocation after the constructor.
 *
 * A pivot below `FLOATING` times its diagonal belongs to a part that nothing holds (its row sums are zero): its
 * unknown comes out as zero, and the row is counted in `floating`.
 *
 * Source: George and Liu 1981, chapter 5 (from memory). Range: diagonally dominant or positive definite matrices;
 * the list of updates grows with the square of the fill, which suits networks up to some ten thousand links.
 * Errors: none thrown; a matrix with unheld parts is reported by `floating`.
 *
 * Worked example: [[2, −1], [−1, 2]]·x = [1, 1] → x = [1, 1].
 */
import { Columns } from './columns.ts';
import type { SymmetricStructure } from './structure.ts';

/** Ratio of pivot to diagonal under which nothing but rounding is left. */
const FLOATING = 1e-14;

/** Matrix and solution, made for one structure; see the head of this file. */
export class SymmetricSystem {
  readonly structure: SymmetricStructure;
  /** Diagonal of A by place; cells beyond the rows, if asked for, take what has no row. */
  readonly diagonal: Float64Array;
  /** Entries of A below the diagonal, where L has its own (`entryOf`), and one more cell for what has none. */
  readonly off: Float64Array;
  readonly #pivot: Float64Array;
  readonly #inverse: Float64Array;
  /** Rows without a pivot in the last solution. */
  floating = 0;

  constructor(structure: SymmetricStructure, cells = structure.size, columns = new Columns(0)) {
    this.structure = structure;
    this.diagonal = columns.numbers(cells);
    this.off = columns.numbers(structure.row.length + 1);
    this.#pivot = columns.numbers(structure.size);
    this.#inverse = columns.numbers(structure.size);
  }

  clear(): void {
    this.diagonal.fill(0);
    this.off.fill(0);
  }

  /** Whether the row (by place) had no pivot. */
  isFloating(place: number): boolean {
    return this.#inverse[place] === 0;
  }

  /** Solves in place: `x` holds the right-hand side by place, and then the solution. `off` is used up. */
  solve(x: Float64Array): void {
    this.#eliminate(x);
    this.#substitute(x);
  }

  #eliminate(x: Float64Array): void {
    const { size, start, row, target } = this.structure;
    const { diagonal, off } = this;
    const pivot = this.#pivot;
    const inverse = this.#inverse;
    let floating = 0;
    let next = 0;
    let end = 0;
    for (let k = 0; k < size; k += 1) pivot[k] = diagonal[k]!;
    for (let k = 0; k < size; k += 1) {
      const held = pivot[k]! > FLOATING * diagonal[k]!;
      const over = held ? 1 / pivot[k]! : 0;
      inverse[k] = over;
      if (!held) floating += 1;
      const y = x[k]!;
      const begin = end;
      end = start[k + 1]!;
      for (let a = begin; a < end; a += 1) {
        const entry = off[a]!;
        const ratio = entry * over;
        const i = row[a]!;
        off[a] = ratio;
        pivot[i]! -= ratio * entry;
        x[i]! -= ratio * y;
        for (let b = a + 1; b < end; b += 1) {
          off[target[next]!]! -= ratio * off[b]!;
          next += 1;
        }
      }
    }
    this.floating = floating;
  }

  #substitute(x: Float64Array): void {
    const { size, start, row } = this.structure;
    const { off } = this;
    const inverse = this.#inverse;
    let end = start[size]!;
    for (let k = size - 1; k >= 0; k -= 1) {
      const begin = start[k]!;
      let y = x[k]! * inverse[k]!;
      // From the far end, since the nearest unknown was found last and is still on its way.
      for (let a = end - 1; a >= begin; a -= 1) y -= off[a]! * x[row[a]!]!;
      end = begin;
      x[k] = y;
    }
  }
}
