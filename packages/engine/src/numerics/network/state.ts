/**
 * Everything a solve reads and writes, laid out once per topology.
 *
 * Potentials, balances and the diagonal of the matrix stand by *cell*: the free nodes first, each at its place in the
 * elimination, so that its cell is its row; then the held nodes; last the ground, which stands at zero. What is
 * gathered in the cells beyond the rows is never read.
 */
import { entryOf, keptStructure, SymmetricSystem } from '../sparse/index.ts';
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

/** Links, nodes and matrix of one topology as columns of numbers. */
export class NetworkState {
  readonly nodeCount: number;
  /** Free nodes, which are the rows of the matrix. */
  readonly rows: number;
  readonly links: LinkTable;
  readonly system: SymmetricSystem;
  readonly fixed: Uint8Array;
  /** Cell by node. */
  readonly cell: Int32Array;
  readonly potential: Float64Array;
  readonly demand: Float64Array;
  /** Right-hand side of the next system, and after it is solved the change of potential; zero beyond the rows. */
  readonly change: Float64Array;
  readonly scratch: Float64Array;
  /** Nodes at the ends of a link. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Cells and matrix entry that a link acts on in its present state: see `attach`. */
  readonly tail: Int32Array;
  readonly head: Int32Array;
  readonly entry: Int32Array;
  /** Flow that a link's tangent predicts with the present potentials, and how it follows their change. */
  readonly predicted: Float64Array;
  readonly conductance: Float64Array;
  /** Step of flows that the damped search goes along. */
  readonly direction: Float64Array;
  readonly measures: Measures = { changed: 0, total: 0, moved: 0, ahead: 0, worst: 0, greatest: 0 };
  readonly #entryOpen: Int32Array;

  constructor(fixed: Uint8Array, ends: readonly (readonly [number, number])[]) {
    const numbers = (): Float64Array => new Float64Array(ends.length);
    const cells = (): Float64Array => new Float64Array(fixed.length + 1);
    this.nodeCount = fixed.length;
    this.fixed = fixed;
    this.links = new LinkTable(ends.length);
    this.from = Int32Array.from(ends, ([from]) => from);
    this.to = Int32Array.from(ends, ([, to]) => to);
    this.cell = new Int32Array(fixed.length);
    this.#entryOpen = new Int32Array(ends.length);
    this.system = this.#layOut(ends);
    this.rows = this.system.structure.size;
    this.potential = cells();
    this.demand = cells();
    this.change = cells();
    this.scratch = cells();
    this.tail = new Int32Array(ends.length);
    this.head = new Int32Array(ends.length);
    this.entry = new Int32Array(ends.length);
    this.predicted = numbers();
    this.conductance = numbers();
    this.direction = numbers();
    for (let i = 0; i < ends.length; i += 1) this.attach(i);
  }

  /** Cell of the ground. */
  get ground(): number {
    return this.nodeCount;
  }

  /**
   * Ties a link to what it acts on in its present state: its two nodes; a regulator in charge to the ground and its
   * outlet (whose potential it sets, whatever the inlet's); a shut link to the ground alone.
   */
  attach(i: number): void {
    const doing = this.links.state[i]!;
    const apart = doing === SHUT || doing === HOLDING;
    this.tail[i] = apart ? this.ground : this.cell[this.from[i]!]!;
    this.head[i] = doing === SHUT ? this.ground : this.cell[this.to[i]!]!;
    this.entry[i] = apart ? this.system.structure.row.length : this.#entryOpen[i]!;
  }

  /** A node that the last solution found held by nothing; −1 if there was none. */
  looseNode(): number {
    if (this.system.floating === 0) return -1;
    return this.cell.findIndex((cell) => cell < this.rows && this.system.isFloating(cell));
  }

  #layOut(ends: readonly (readonly [number, number])[]): SymmetricSystem {
    let free = 0;
    const index = Array.from(this.fixed, (held) => (held ? -1 : free++));
    const pairs = ends
      .map(([a, b]) => [index[a]!, index[b]!] as const)
      .filter(([a, b]) => a >= 0 && b >= 0 && a !== b);
    const structure = keptStructure(free, pairs);
    let beyond = free;
    index.forEach((at, node) => {
      this.cell[node] = at < 0 ? beyond++ : structure.place[at]!;
    });
    ends.forEach(([a, b], i) => {
      const entry = index[a]! < 0 || index[b]! < 0 ? -1 : entryOf(structure, index[a]!, index[b]!);
      this.#entryOpen[i] = entry < 0 ? structure.row.length : entry;
    });
    return new SymmetricSystem(structure, this.nodeCount + 1);
  }
}
