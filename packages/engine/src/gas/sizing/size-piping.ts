/**
 * Sizes a piping system by the methods of the fuel-gas code.
 *
 * Longest-length: every section is read on the row of the longest run, whichever run it is on.
 * Branch-length: a section is read on the row of the run to the most remote outlet that it serves; sections of the
 * longest run so keep the longest length, branches their own.
 *
 * Where fittings are to be counted, their length depends on the sizes found: they are first counted in the smallest
 * size, then in the sizes found, until these stand. A size once needed is kept, so it comes to rest.
 *
 * Source: IFGC 2018 Appendix A.3.1 and A.3.2 (from memory; checked with the code's own examples).
 * Range: that of the table. Errors: `beyond-table` for a length or a load that the table does not reach.
 * Worked example: NFPA 54 example C.7.1, 60 ft, 0.5 in w.c.: 35, 75, 110, 135, 245 ft3/h → 3/8, 3/4, 3/4, 3/4, 1.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import { type CapacityTable, smallestSize, tableRow } from './capacity-table.ts';
import { farthestRuns, type PipingTree, runLengths } from './tree.ts';

export type SizingMethod = 'longest-length' | 'branch-length';

export interface SizedSection {
  readonly id: string;
  /** Id of the table's size. */
  readonly size: string;
  /** Index of the table's size. */
  readonly sizeIndex: number;
  /** Standard m3/s. */
  readonly load: number;
  /** Length of run the size was asked for, equivalent lengths included, m. */
  readonly designLength: number;
  /** Length of the table's row, m. */
  readonly rowLength: number;
  /** What the size carries on that row, standard m3/s. */
  readonly capacity: number;
  /** Equivalent length of the section's own fittings in this size, m. */
  readonly fittingsLength: number;
}

/** Sizes every section, in the order of the tree. */
export function sizePiping(
  tree: PipingTree,
  table: CapacityTable,
  method: SizingMethod,
): Result<readonly SizedSection[]> {
  let sizes = tree.sections.map(() => 0);
  // Each pass keeps or raises at least one size; there are no more raises than sizes times sections.
  for (let pass = 0; pass <= tree.sections.length * table.sizes.length; pass += 1) {
    const sized = pick(tree, table, { method, sizes });
    if (!sized.ok) return sized;
    const next = sized.value.map((section, i) => Math.max(section.sizeIndex, sizes[i] ?? 0));
    if (next.every((size, i) => size === sizes[i])) return sized;
    sizes = next;
  }
  return fail({ code: 'not-converged', where: 'sections' });
}

interface Pass {
  readonly method: SizingMethod;
  /** Sizes of the pass before, which give the fittings their length and are not gone below. */
  readonly sizes: readonly number[];
}

function pick(tree: PipingTree, table: CapacityTable, pass: Pass): Result<readonly SizedSection[]> {
  const fittings = tree.sections.map(
    (section, i) => (section.fittings ?? 0) * bore(table, pass.sizes[i] ?? 0),
  );
  const lengths = tree.sections.map((section, i) => section.length + (fittings[i] ?? 0));
  const farthest = farthestRuns(tree, runLengths(tree, lengths));
  const longest = Math.max(...farthest);
  const issues: Issue[] = [];
  const sized: SizedSection[] = [];
  tree.sections.forEach(({ id }, i) => {
    const designLength = pass.method === 'longest-length' ? longest : (farthest[i] ?? 0);
    const load = tree.loads[i] ?? 0;
    const found = read(table, { designLength, load, atLeast: pass.sizes[i] ?? 0 });
    if (!found.ok) issues.push(...found.issues.map((issue) => ({ ...issue, where: `${id}.${issue.where}` })));
    else sized.push({ id, load, designLength, fittingsLength: fittings[i] ?? 0, ...found.value });
  });
  return issues.length > 0 ? fail(...issues) : ok(sized);
}

interface Need {
  readonly designLength: number;
  readonly load: number;
  readonly atLeast: number;
}

function read(table: CapacityTable, need: Need) {
  const row = tableRow(table, need.designLength);
  if (!row.ok) return row;
  const smallest = smallestSize(table, row.value, need.load);
  if (!smallest.ok) return smallest;
  const sizeIndex = Math.max(smallest.value, need.atLeast);
  return ok({
    sizeIndex,
    size: table.sizes[sizeIndex]?.id ?? '',
    rowLength: table.lengths[row.value] ?? Number.NaN,
    capacity: table.flows[sizeIndex]?.[row.value] ?? Number.NaN,
  });
}

/** Inside diameter of a size, m; corrugated tubing has none, and its tables hold its fittings. */
function bore(table: CapacityTable, size: number): number {
  const carrier = table.sizes[size]?.carrier;
  return carrier?.type === 'bore' ? carrier.insideDiameter : 0;
}
