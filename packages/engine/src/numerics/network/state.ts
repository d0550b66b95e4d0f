/** Everything a solve reads and writes, laid out once per topology. */
import { entryOf, SymmetricSystem, symmetricStructure } from '../sparse/index.ts';
import { HOLDING, LinkTable, SHUT } from './link-table.ts';

/** How far a sweep found the network from a solution. */
export interface Measures {
  /** Links that changed what they do. */
  changed: number;
  /** Sum of flows, and of the changes of flow made by the last step. */
  total: number;
  moved: number;
  /** Sum of the changes of flow that the links alone would make next. */
  ahead: number;
  /** Greatest miss of a link's law, and greatest loss or lift. */
  worst: number;
  greatest: number;
}

export class NetworkState {
  readonly nodeCount: number;
  readonly links: LinkTable;
  readonly system: SymmetricSystem;
  /** Potential by node, and one more cell that is zero: the ground. */
  readonly potential: Float64Array;
  readonly demand: Float64Array;
  readonly fixed: Uint8Array;
  /** Row of the matrix by node; fixed nodes and the ground share one beyond the last, which nobody reads. */
  readonly row: Int32Array;
  /** Nodes at the ends of a link, as given. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Ends, rows and matrix entry that a link acts on in its present state: see `attach`. */
  readonly tail: Int32Array;
  readonly head: Int32Array;
  readonly tailRow: Int32Array;
  readonly headRow: Int32Array;
  readonly entry: Int32Array;
  /** Right-hand side of the next system, by row. */
  readonly surplus: Float64Array;
  /** Change of potential of the last step, by row. */
  readonly change: Float64Array;
  /** Flow that a link's tangent predicts with the present potentials, and how it follows their change. */
  readonly predicted: Float64Array;
  readonly conductance: Float64Array;
  /** Step of flows that the damped search goes along. */
  readonly direction: Float64Array;
  readonly measures: Measures = { changed: 0, total: 0, moved: 0, ahead: 0, worst: 0, greatest: 0 };
  readonly #entryOpen: Int32Array;

  constructor(fixed: Uint8Array, ends: readonly (readonly [number, number])[]) {
    const integers = (): Int32Array => new Int32Array(ends.length);
    const numbers = (): Float64Array => new Float64Array(ends.length);
    this.nodeCount = fixed.length;
    this.fixed = fixed;
    this.links = new LinkTable(ends.length);
    this.from = Int32Array.from(ends, ([from]) => from);
    this.to = Int32Array.from(ends, ([, to]) => to);
    this.tail = integers();
    this.head = integers();
    this.tailRow = integers();
    this.headRow = integers();
    this.entry = integers();
    this.#entryOpen = integers();
    this.row = new Int32Array(fixed.length + 1);
    this.system = this.#layOut(ends);
    const rows = this.system.structure.size;
    this.potential = new Float64Array(fixed.length + 1);
    this.demand = new Float64Array(fixed.length);
    this.surplus = new Float64Array(rows + 1);
    this.change = new Float64Array(rows + 1);
    this.predicted = numbers();
    this.conductance = numbers();
    this.direction = numbers();
    for (let i = 0; i < ends.length; i += 1) this.attach(i);
  }

  /**
   * Ties a link to what it acts on in its present state: its two nodes; a regulator in charge to the ground and its
   * outlet (whose potential it sets, whatever the inlet's); a shut link to the ground alone.
   */
  attach(i: number): void {
    const doing = this.links.state[i]!;
    const ground = this.nodeCount;
    this.tail[i] = doing === SHUT || doing === HOLDING ? ground : this.from[i]!;
    this.head[i] = doing === SHUT ? ground : this.to[i]!;
    this.tailRow[i] = this.row[this.tail[i]!]!;
    this.headRow[i] = this.row[this.head[i]!]!;
    const apart = doing === SHUT || doing === HOLDING;
    this.entry[i] = apart ? this.system.structure.row.length : this.#entryOpen[i]!;
  }

  /** A node that the last solution found held by nothing; −1 if there was none. */
  looseNode(): number {
    if (this.system.floating === 0) return -1;
    const rows = this.system.structure.size;
    for (let n = 0; n < this.nodeCount; n += 1)
      if (this.row[n]! < rows && this.system.isFloating(this.row[n]!)) return n;
    return -1;
  }

  #layOut(ends: readonly (readonly [number, number])[]): SymmetricSystem {
    let free = 0;
    const index = Array.from(this.fixed, (held) => (held ? -1 : free++));
    const pairs = ends
      .map(([a, b]) => [index[a]!, index[b]!] as const)
      .filter(([a, b]) => a >= 0 && b >= 0 && a !== b);
    const structure = symmetricStructure(free, pairs);
    this.row.fill(free);
    index.forEach((at, node) => {
      if (at >= 0) this.row[node] = structure.place[at]!;
    });
    ends.forEach(([a, b], i) => {
      const entry = index[a]! < 0 || index[b]! < 0 ? -1 : entryOf(structure, index[a]!, index[b]!);
      this.#entryOpen[i] = entry < 0 ? structure.row.length : entry;
    });
    return new SymmetricSystem(structure);
  }
}
