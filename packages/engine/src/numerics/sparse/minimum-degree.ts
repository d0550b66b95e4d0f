/**
 * Fill-reducing order for a sparse symmetric matrix: eliminate the node of least degree first, join its
 * neighbours, repeat. Done once per topology, so plain sets are fast enough.
 *
 * Ties go to the node that became so light last, then to the lower index: the order depends on the graph alone.
 *
 * Source: Tinney and Walker 1967, scheme 2; George and Liu, Computer Solution of Large Sparse Positive Definite
 * Systems, 1981, chapter 5 (from memory).
 */

/** Pairs of row indices, each an off-diagonal entry of the matrix; repeats and either order are allowed. */
export type Pairs = readonly (readonly [number, number])[];

/** The rows in the order of their elimination. */
export function minimumDegreeOrder(size: number, pairs: Pairs): Int32Array {
  const neighbours = adjacency(size, pairs);
  const buckets = new DegreeBuckets(neighbours);
  const order = new Int32Array(size);
  for (let step = 0; step < size; step += 1) {
    const row = buckets.takeLightest();
    order[step] = row;
    eliminate(row, neighbours, buckets);
  }
  return order;
}

function adjacency(size: number, pairs: Pairs): Set<number>[] {
  const neighbours = Array.from({ length: size }, () => new Set<number>());
  for (const [a, b] of pairs) {
    if (a === b) continue;
    neighbours[a]!.add(b);
    neighbours[b]!.add(a);
  }
  return neighbours;
}

function eliminate(row: number, neighbours: Set<number>[], buckets: DegreeBuckets): void {
  const around = [...neighbours[row]!];
  for (const a of around) {
    const set = neighbours[a]!;
    set.delete(row);
    for (const b of around) if (b !== a) set.add(b);
    buckets.move(a, set.size);
  }
  neighbours[row]!.clear();
}

/** Rows by degree, so that the lightest is found without a search over all. */
class DegreeBuckets {
  readonly #degree: number[];
  readonly #rows: Set<number>[] = [];
  #least = 0;

  constructor(neighbours: readonly Set<number>[]) {
    this.#degree = neighbours.map((set) => set.size);
    this.#degree.forEach((degree, row) => {
      this.#bucket(degree).add(row);
    });
  }

  takeLightest(): number {
    while (this.#bucket(this.#least).size === 0) this.#least += 1;
    const [row] = this.#bucket(this.#least);
    this.#bucket(this.#least).delete(row!);
    return row!;
  }

  move(row: number, degree: number): void {
    this.#bucket(this.#degree[row]!).delete(row);
    this.#degree[row] = degree;
    this.#bucket(degree).add(row);
    this.#least = Math.min(this.#least, degree);
  }

  #bucket(degree: number): Set<number> {
    while (this.#rows.length <= degree) this.#rows.push(new Set());
    return this.#rows[degree]!;
  }
}
