/**
 * Numeric A = L·D·Lᵀ of a sparse symmetric matrix, row by row, and the solution of A·x = b. No allocation after
 * the constructor.
 *
 * A pivot below `FLOATING` times its diagonal belongs to a part that nothing holds (a row sum of zero): its
 * inverse is set to zero, so that the unknown of that row comes out as zero, and the row is counted in `floating`.
 *
 * Source: as `structure.ts`. Range: diagonally dominant or positive definite matrices. Errors: none thrown; a
 * matrix with unheld parts is reported by `floating`.
 *
 * Worked example: [[2, −1], [−1, 2]]·x = [1, 1] → x = [1, 1].
 */
import type { SymmetricStructure } from './structure.ts';

/** Ratio of pivot to diagonal under which nothing but rounding is left. */
const FLOATING = 1e-14;

export class SymmetricFactor {
  readonly structure: SymmetricStructure;
  /** Values of A, to be filled before `factorise`: diagonal by place, off-diagonals as in the structure. */
  readonly diagonal: Float64Array;
  readonly off: Float64Array;
  readonly #l: Float64Array;
  readonly #inverse: Float64Array;
  readonly #row: Float64Array;
  /** Rows without a pivot in the last factorisation. */
  floating = 0;

  constructor(structure: SymmetricStructure) {
    this.structure = structure;
    this.diagonal = new Float64Array(structure.size + 1);
    this.off = new Float64Array(structure.column.length + 1);
    this.#l = new Float64Array(structure.lRow.length);
    this.#inverse = new Float64Array(structure.size);
    this.#row = new Float64Array(structure.size);
  }

  factorise(): void {
    const { size, start, column, rowStart, rowColumn, rowEntry, lStart, lRow } = this.structure;
    const { diagonal, off } = this;
    const l = this.#l;
    const inverse = this.#inverse;
    const row = this.#row;
    let floating = 0;
    for (let i = 0; i < size; i += 1) {
      for (let p = start[i]!; p < start[i + 1]!; p += 1) row[column[p]!] = off[p]!;
      let pivot = diagonal[i]!;
      for (let r = rowStart[i]!; r < rowStart[i + 1]!; r += 1) {
        const k = rowColumn[r]!;
        const entry = rowEntry[r]!;
        const y = row[k]!;
        row[k] = 0;
        for (let p = lStart[k]!; p < entry; p += 1) row[lRow[p]!]! -= l[p]! * y;
        const ratio = y * inverse[k]!;
        pivot -= ratio * y;
        l[entry] = ratio;
      }
      if (pivot > FLOATING * diagonal[i]!) inverse[i] = 1 / pivot;
      else {
        inverse[i] = 0;
        floating += 1;
      }
    }
    this.floating = floating;
  }

  /** Whether the row (by place) had no pivot. */
  isFloating(place: number): boolean {
    return this.#inverse[place] === 0;
  }

  /** Solves in place: `x` holds b by place, and then the solution. */
  solve(x: Float64Array): void {
    const { size, lStart, lRow } = this.structure;
    const l = this.#l;
    const inverse = this.#inverse;
    for (let k = 0; k < size; k += 1) {
      const y = x[k]!;
      for (let p = lStart[k]!; p < lStart[k + 1]!; p += 1) x[lRow[p]!]! -= l[p]! * y;
    }
    for (let k = size - 1; k >= 0; k -= 1) {
      let y = x[k]! * inverse[k]!;
      for (let p = lStart[k]!; p < lStart[k + 1]!; p += 1) y -= l[p]! * x[lRow[p]!]!;
      x[k] = y;
    }
  }
}
