/** The loop solved in one state after another: flows, pressures, temperatures and velocities of every part. */
import { evaluate, water } from '@firstfire/engine';
import { heatOutput } from '../plant/heat/heating.ts';
import { WATER_TEMPERATURE } from '../plant/water/equipment.ts';
import { linksByRun } from '../plant/water/links.ts';
import { heatersOf } from '../plant/water/loop-states.ts';
import { readingOf } from '../plant/water/reading-of.ts';
import type { LoopAt, StateAsked } from '../plant/water/water-loop.ts';
import type {
  HeaterInFlow,
  RunInFlow,
  WaterFlowing,
  WaterStateShown,
  WaterTemperatures,
} from './water-shown.ts';
import { lackedBy, type StateRead, type WaterSurveyed } from './water-surveyed.ts';

export function stateShown(read: WaterSurveyed, { asked, reader }: StateRead): WaterStateShown {
  const { heating } = read.plan.states;
  const burns = heating.some((one) => one.speed === asked.speed && one.basin === asked.basin);
  const base = { ...asked, heating: burns, flowing: undefined, missing: [], issues: [] };
  const missing = lackedBy(read.reader, reader);
  if (missing.length > 0) return { ...base, missing };
  const at = read.loop.at(read.values);
  if (!at.ok) return { ...base, issues: at.issues };
  return solved(read, at.value, base);
}

function solved(read: WaterSurveyed, at: LoopAt, shown: WaterStateShown): WaterStateShown {
  const state = at.state(shown, read.values);
  if (!state.ok) return { ...shown, issues: state.issues };
  // Heads stand in the pad until it is solved anew: so this state is solved here, whatever was kept of it.
  const solution = water.solvePad(at.pad, state.value);
  const issues = solution.ok ? solution.value.issues : solution.issues;
  if (!solution.ok || issues.length > 0)
    return { ...shown, issues: issues.map((one) => readingOf(read.plan, one)) };
  const found = { read, at, shown, solution: solution.value };
  return { ...shown, flowing: flowing(found, state.value) };
}

interface Found {
  readonly read: WaterSurveyed;
  readonly at: LoopAt;
  readonly shown: StateAsked & { readonly heating: boolean };
  readonly solution: water.PadSolution;
}

function flowing(found: Found, state: water.PadState): WaterFlowing {
  const { at, solution } = found;
  const heaters = heatersShown(found, state);
  const { density } = solution.water;
  const back = water.pointPressure.kernel({
    head: water.stationHead(at.pad, 'return'),
    elevation: at.pad.spec.pump.elevation,
    velocity: 0,
    density,
  });
  const filterLoss = water.stationHead(at.pad, 'filter-inlet') - water.stationHead(at.pad, 'filter-outlet');
  return {
    flow: solution.flow,
    bypass: solution.bypassFlow,
    pumpHead: solution.pumpHead,
    filterLoss,
    pressures: {
      pumpInlet: solution.pumpInletPressure,
      pumpOutlet: solution.pumpOutletPressure,
      filterInlet: solution.filterInletPressure,
      filterOutlet: solution.filterOutletPressure,
      return: back,
    },
    temperatures: temperatures(found, heaters),
    heaters,
    runs: runsShown(found),
  };
}

function heatersShown({ read, at, shown, solution }: Found, state: water.PadState): HeaterInFlow[] {
  const warming = shown.heating ? heatersOf(read.view, shown.basin) : [];
  return solution.heaters.map(({ id, flow, inletPressure, outletPressure }, place): HeaterInFlow => {
    const spec = at.pad.spec.bank?.heaters[place];
    const burns = warming.includes(id);
    return {
      id,
      burns,
      flow,
      inletPressure,
      outletPressure,
      restPressure: spec === undefined ? Number.NaN : water.pressureAtRest(at.pad.spec, spec, state),
      rise: burns ? riseOf(read, solution, { id, flow }) : 0,
    };
  });
}

function riseOf(
  read: WaterSurveyed,
  solution: water.PadSolution,
  { id, flow }: { readonly id: string; readonly flow: number },
): number | undefined {
  const one = read.burners.get(id);
  if (one === undefined || lackedBy(one.reader).length > 0) return undefined;
  const heat = heatOutput([one.burner], read.values);
  if (!heat.ok) return undefined;
  const { density, specificHeat } = solution.water;
  const rise = evaluate(water.temperatureRise, { heat: heat.value, flow, density, specificHeat });
  return rise.ok ? rise.value : undefined;
}

/** Streams of one water mix by their flows. */
function temperatures({ read, solution }: Found, heaters: readonly HeaterInFlow[]): WaterTemperatures {
  const basin = read.values(WATER_TEMPERATURE);
  const through = heaters.reduce((sum, one) => sum + one.flow, 0);
  const carried = heaters.reduce<number | undefined>(
    (sum, one) => (sum === undefined || one.rise === undefined ? undefined : sum + one.rise * one.flow),
    0,
  );
  const mixed = (flow: number): number | undefined => {
    if (carried === undefined) return undefined;
    return flow > 0 ? basin + carried / flow : basin;
  };
  return { basin, heated: mixed(through), return: mixed(solution.flow) };
}

function runsShown({ read, at, solution }: Found): ReadonlyMap<string, RunInFlow> {
  const links = linksByRun(read.plan);
  const runs = new Map<string, RunInFlow>();
  for (const { id, insideDiameter } of read.plan.runs) {
    const own = links.get(id) ?? [];
    if (own.length === 0) continue;
    const flow = Math.max(
      ...own.map((link) => Math.abs(solution.flows[at.pad.network.linkIndex(link)] ?? 0)),
    );
    runs.set(id, { flow, velocity: water.velocity.kernel({ insideDiameter, flow }) });
  }
  return runs;
}
