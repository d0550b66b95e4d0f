/**
 * Pressure along a sized piping system by the code's own equations, section by section from the point of delivery:
 * the drop of each section is taken at the pressure its inlet has left.
 *
 * Source: IFGC 2018 Section 402.4, Equations 4-1 and 4-2, through `code/carrier`.
 * Range: that of the equations. Errors: their issues, named by the section; sections beyond one that fails are left
 * out of the answer's issues, since nothing can be said of them.
 * Worked example: one section of 3/4 in, 60 ft, 137 ft3/h from 7 in w.c. → 6.5 in w.c. at its end.
 */
import { fail, type Issue, ok, type Recorder, type Result } from '../../trace/index.ts';
import { type Carrier, carrierDrop } from '../code/carrier.ts';
import type { Fuel } from '../fuel.ts';
import type { PipingTree } from './tree.ts';

export interface SectionDrop {
  readonly id: string;
  /** Gauge, Pa. */
  readonly inletPressure: number;
  /** Pa. */
  readonly pressureDrop: number;
  /** Gauge, Pa. */
  readonly outletPressure: number;
}

export interface DropBasis {
  /** Gauge pressure at the point of delivery, Pa. */
  readonly supplyPressure: number;
  readonly fuel: Fuel;
  /** What each section is made of, and its length with its fittings, m; in the order of the tree. */
  readonly runs: readonly { readonly carrier: Carrier; readonly length: number }[];
}

/** Drop and pressures of every section, in the order of the tree. */
export function sectionDrops(
  tree: PipingTree,
  basis: DropBasis,
  recorder?: Recorder,
): Result<readonly SectionDrop[]> {
  const drops: (SectionDrop | undefined)[] = [];
  const issues: Issue[] = [];
  tree.sections.forEach((section, i) => {
    const feeder = tree.upstream[i] ?? -1;
    const inletPressure = feeder < 0 ? basis.supplyPressure : drops[feeder]?.outletPressure;
    const run = basis.runs[i];
    if (run === undefined) issues.push({ code: 'ill-formed', where: section.id, reason: 'no-carrier' });
    const drop =
      run === undefined || inletPressure === undefined
        ? undefined
        : dropOf(section.id, { ...run, inletPressure, flow: tree.loads[i] ?? 0, fuel: basis.fuel }, recorder);
    if (drop?.ok === false) issues.push(...drop.issues);
    drops.push(drop?.ok ? drop.value : undefined);
  });
  const known = drops.filter((drop) => drop !== undefined);
  return issues.length > 0 ? fail(...issues) : ok(known);
}

function dropOf(
  id: string,
  run: Parameters<typeof carrierDrop>[0],
  recorder?: Recorder,
): Result<SectionDrop> {
  recorder?.open();
  const drop = carrierDrop(run, recorder);
  // What fails here is a section that loses more than it has: nothing is left behind it.
  const value = drop.ok ? run.inletPressure - drop.value : 0;
  recorder?.closeGroup({ id: 'gas.section', value, kind: 'pressure', about: { section: id } });
  if (!drop.ok) return fail(...drop.issues.map((issue) => ({ ...issue, where: `${id}.${issue.where}` })));
  return ok({
    id,
    inletPressure: run.inletPressure,
    pressureDrop: drop.value,
    outletPressure: run.inletPressure - drop.value,
  });
}
