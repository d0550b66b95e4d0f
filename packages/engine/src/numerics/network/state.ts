/** Everything a solve reads and writes, laid out once per topology. */
import { entryOf, SymmetricFactor, symmetricStructure } from '../sparse/index.ts';
import { LinkTable } from './link-table.ts';

export class NetworkState {
  readonly nodeCount: number;
  readonly links: LinkTable;
  readonly factor: SymmetricFactor;
  readonly potential: Float64Array;
  readonly demand: Float64Array;
  readonly fixed: Uint8Array;
  /** Row of the matrix by node; fixed nodes share one row beyond the last, which nobody reads. */
  readonly row: Int32Array;
  readonly fromRow: Int32Array;
  readonly toRow: Int32Array;
  /** Entry of the matrix by link; links at a fixed node share one beyond the last. */
  readonly entry: Int32Array;
  /** Right-hand side, then the change of potential by row. */
  readonly change: Float64Array;
  readonly predicted: Float64Array;
  readonly conductance: Float64Array;

  constructor(fixed: Uint8Array, ends: readonly (readonly [number, number])[]) {
    this.nodeCount = fixed.length;
    this.fixed = fixed;
    this.links = new LinkTable(ends.length);
    this.row = new Int32Array(fixed.length);
    this.fromRow = new Int32Array(ends.length);
    this.toRow = new Int32Array(ends.length);
    this.entry = new Int32Array(ends.length);
    this.factor = this.#layOut(ends);
    this.potential = new Float64Array(fixed.length);
    this.demand = new Float64Array(fixed.length);
    this.change = new Float64Array(this.factor.structure.size + 1);
    this.predicted = new Float64Array(ends.length);
    this.conductance = new Float64Array(ends.length);
  }

  #layOut(ends: readonly (readonly [number, number])[]): SymmetricFactor {
    let free = 0;
    const index = Array.from(this.fixed, (held) => (held ? -1 : free++));
    const pairs = ends
      .map(([a, b]) => [index[a]!, index[b]!] as const)
      .filter(([a, b]) => a >= 0 && b >= 0 && a !== b);
    const structure = symmetricStructure(free, pairs);
    index.forEach((at, node) => {
      this.row[node] = at < 0 ? free : structure.place[at]!;
    });
    ends.forEach(([a, b], i) => {
      this.links.from[i] = a;
      this.links.to[i] = b;
      this.fromRow[i] = this.row[a]!;
      this.toRow[i] = this.row[b]!;
      const entry = index[a]! < 0 || index[b]! < 0 ? -1 : entryOf(structure, index[a]!, index[b]!);
      this.entry[i] = entry < 0 ? structure.column.length : entry;
    });
    return new SymmetricFactor(structure);
  }
}
