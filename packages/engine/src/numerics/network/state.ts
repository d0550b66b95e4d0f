/**
 * Everything a solve reads and writes, laid out once per topology.
 *
 * Potentials, balances and the diagonal of the matrix stand by *cell*: the free nodes first, each at its place in the
 * elimination, so that its cell is its row; then the held nodes; last the ground, which stands at zero. What is
 * gathered in the cells beyond the rows is never read.
 */
import { Columns, entryOf, keptStructure, SymmetricSystem } from '../sparse/index.ts';
import { HOLDING, LinkTable, SHUT } from './link-table.ts';
import type { Graph } from './topology.ts';

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

/** Bytes that the columns of a usual network take; a matrix with more fill asks for more. */
const ROOM_BY_LINK = 300;
const ROOM_BY_NODE = 100;
const ROOM = 256;

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

  constructor({ fixed, from, to }: Graph) {
    const links = from.length;
    const columns = new Columns(ROOM_BY_LINK * links + ROOM_BY_NODE * fixed.length + ROOM);
    const cells = fixed.length + 1;
    this.nodeCount = fixed.length;
    this.fixed = fixed;
    this.links = new LinkTable(links, columns);
    this.from = from;
    this.to = to;
    this.cell = columns.integers(fixed.length);
    this.#entryOpen = columns.integers(links);
    this.system = this.#layOut(columns);
    this.rows = this.system.structure.size;
    this.potential = columns.numbers(cells);
    this.demand = columns.numbers(cells);
    this.change = columns.numbers(cells);
    this.scratch = columns.numbers(cells);
    this.tail = columns.integers(links);
    this.head = columns.integers(links);
    this.entry = columns.integers(links);
    this.predicted = columns.numbers(links);
    this.conductance = columns.numbers(links);
    this.direction = columns.numbers(links);
    for (let i = 0; i < links; i += 1) this.attach(i);
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

  #layOut(columns: Columns): SymmetricSystem {
    const { from, to, fixed, cell } = this;
    let free = 0;
    for (let n = 0; n < fixed.length; n += 1) cell[n] = fixed[n] ? -1 : free++;
    const ends: number[] = [];
    for (let i = 0; i < from.length; i += 1) {
      const a = cell[from[i]!]!;
      const b = cell[to[i]!]!;
      if (a >= 0 && b >= 0 && a !== b) ends.push(a, b);
    }
    const structure = keptStructure(free, ends);
    const none = structure.row.length;
    for (let i = 0; i < from.length; i += 1) {
      const a = cell[from[i]!]!;
      const b = cell[to[i]!]!;
      const entry = a < 0 || b < 0 ? -1 : entryOf(structure, a, b);
      this.#entryOpen[i] = entry < 0 ? none : entry;
    }
    let beyond = free;
    for (let n = 0; n < fixed.length; n += 1) cell[n] = cell[n]! < 0 ? beyond++ : structure.place[cell[n]!]!;
    return new SymmetricSystem(structure, this.nodeCount + 1, columns);
  }
}
