/**
 * A gas system falls into zones of one pressure each: from the supply, and from the outlet of each line regulator.
 * The code sizes each zone by itself, with the regulators that hang on it as loads.
 */
import { fail, gas, ok, type Result } from '@firstfire/engine';
import {
  type GasPlan,
  type PlannedLoad,
  type PlannedRegulator,
  type PlannedSegment,
  SUPPLY,
} from './gas-plan.ts';

export interface Zone {
  /** Junction at its head. */
  readonly root: string;
  /** Absent for the zone of the supply itself. */
  readonly regulator?: PlannedRegulator;
  /** In the direction the gas flows, upstream first. */
  readonly segments: readonly ZoneSegment[];
  readonly regulators: readonly PlannedRegulator[];
  readonly loads: readonly PlannedLoad[];
}

export interface ZoneSegment {
  readonly planned: PlannedSegment;
  /** Id of the segment that feeds it. */
  readonly upstream?: string;
  /** Junction at its downstream end. */
  readonly end: string;
}

/** A gas system and its zones, or why it falls into none. */
export interface GasTree {
  readonly plan: GasPlan;
  readonly zones: Result<readonly Zone[]>;
}

/**
 * Parts the system; the supply's zone comes first, a regulator's after the zone it hangs on.
 * Errors: a loop (the code's methods know only trees; the physical law takes loops), a junction that nothing feeds.
 */
export function zonesOf(plan: GasPlan): Result<readonly Zone[]> {
  const reached = new Set<string>();
  const zones: Zone[] = [];
  const heads: { root: string; regulator?: PlannedRegulator }[] = [{ root: SUPPLY }];
  for (const head of heads) {
    const zone = spread(plan, head, reached);
    if (!zone.ok) return zone;
    zones.push(zone.value);
    heads.push(...zone.value.regulators.map((regulator) => ({ root: regulator.to, regulator })));
  }
  const cutOff = plan.segments.find((segment) => !reached.has(segment.from) && !reached.has(segment.to));
  if (cutOff !== undefined) {
    return fail({
      code: 'ill-formed',
      where: `gasSegments/${cutOff.id}/from`,
      found: cutOff.from,
      reason: 'not-connected',
    });
  }
  const dangling = plan.loads.find((load) => !reached.has(load.node));
  if (dangling === undefined) return ok(zones);
  return fail({
    code: 'ill-formed',
    where: nodeReading(dangling),
    found: dangling.node,
    reason: 'not-connected',
  });
}

/** Where it was written which junction a load hangs on. */
export function nodeReading({ kind, id }: PlannedLoad): string {
  if (kind === 'lump') return 'gasSupply/-/existingLoadAt';
  return `${kind === 'heater' ? 'heaters' : 'gasAppliances'}/${id}/node`;
}

function spread(plan: GasPlan, head: Pick<Zone, 'root' | 'regulator'>, reached: Set<string>): Result<Zone> {
  const segments: ZoneSegment[] = [];
  const junctions: { node: string; via?: string }[] = [{ node: head.root }];
  const inside = new Set([head.root]);
  const used = new Set<string>();
  for (const { node, via } of junctions) {
    for (const planned of plan.segments) {
      if (used.has(planned.id) || (planned.from !== node && planned.to !== node)) continue;
      used.add(planned.id);
      const end = planned.from === node ? planned.to : planned.from;
      if (inside.has(end)) {
        return fail({
          code: 'ill-formed',
          where: `gasSegments/${planned.id}/to`,
          found: end,
          reason: 'loop',
        });
      }
      inside.add(end);
      segments.push({ planned, end, ...(via === undefined ? {} : { upstream: via }) });
      junctions.push({ node: end, via: planned.id });
    }
  }
  for (const node of inside) reached.add(node);
  const regulators = plan.regulators.filter((one) => inside.has(one.from) && one.id !== head.regulator?.id);
  return ok({ ...head, segments, regulators, loads: plan.loads.filter((load) => inside.has(load.node)) });
}

/** Load on each regulator, standard m3/s: everything in its zone and in the zones behind it. */
export function zoneLoads(
  zones: readonly Zone[],
  flow: (load: PlannedLoad) => number,
): ReadonlyMap<string, number> {
  const totals = new Map<string, number>();
  for (const zone of [...zones].reverse()) {
    const own = zone.loads.reduce((sum, load) => sum + flow(load), 0);
    const behind = zone.regulators.reduce((sum, one) => sum + (totals.get(one.id) ?? 0), 0);
    totals.set(zone.regulator?.id ?? SUPPLY, own + behind);
  }
  return totals;
}

/** The zone as a tree of the code's sizing methods. */
export function zoneTree(
  zone: Zone,
  at: {
    readonly length: (segment: string) => number;
    readonly fittings: (segment: string) => number;
    readonly load: (junction: string) => number;
  },
): Result<gas.PipingTree> {
  return gas.pipingTree(
    zone.segments.map(({ planned, upstream, end }) => ({
      id: planned.id,
      length: at.length(planned.id),
      load: at.load(end),
      fittings: at.fittings(planned.id),
      ...(upstream === undefined ? {} : { upstream }),
    })),
  );
}
