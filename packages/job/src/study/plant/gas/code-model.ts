/**
 * The gas piping as the fuel-gas code sees it: what each section carries by the longest-length method, and the
 * pressure that the code's equation leaves at the heaters with everything connected running.
 */
import { fail, gas, type Issue, ok, Recorder, type Result, type Step } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { readingPath } from '../../facts/view.ts';
import type { Model, Output, Run, Values } from '../model.ts';
import { fuelOf } from './fuel.ts';
import type { GasPlan, PlannedLoad } from './gas-plan.ts';
import { loadSteps } from './load-model.ts';
import { type GasPipe, lengthOf } from './pipes.ts';
import { type GasTree, type Zone, zoneLoads, zoneTree } from './zones.ts';

const SET = readingPath('gasSupply', '-', 'setPressure');
const DESIGN_DROP = readingPath('gasSupply', '-', 'designDrop');

/** 0.5 in w.c., for which the code's low-pressure tables are most used. */
const USUAL_DROP = { value: 124.544, kind: 'pressure-difference' } as const;

export function gasCodeModel(
  reader: SurveyReader,
  { plan, zones, pipes }: GasTree & { readonly pipes: Pipes },
): Model {
  reader.number({ collection: 'gasSupply', id: '-', field: 'setPressure' });
  reader.numberOrUsual({ collection: 'gasSupply', id: '-', field: 'designDrop' }, USUAL_DROP);
  for (const { id } of plan.regulators) {
    reader.numberOrUsual({ collection: 'gasRegulators', id, field: 'designDrop' }, USUAL_DROP);
  }
  return {
    id: 'gas.code',
    provides: provided(plan),
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: zones.ok ? reader.wrong : [...reader.wrong, ...zones.issues],
    run: (values) => (zones.ok ? run(plan, zones.value, { pipes, values, recorder: undefined }) : zones),
    explain: (fact, values) => (zones.ok ? explain(fact, plan, { zones: zones.value, pipes, values }) : []),
  };
}

function provided(plan: GasPlan): FactKey[] {
  const heaters = plan.loads.filter((load) => load.kind === 'heater');
  return [
    ...heaters.map(({ id }): FactKey => `heater/${id}/code-inlet-pressure`),
    ...plan.segments.flatMap(({ id }): FactKey[] => [
      `segment/${id}/code-load`,
      `segment/${id}/code-capacity`,
    ]),
  ];
}

/** The sections a fact stands on: the path to a heater, or the section itself. */
function explain(
  fact: FactKey,
  plan: GasPlan,
  at: { zones: readonly Zone[]; pipes: Pipes; values: Values },
): readonly Step[] {
  const recorder = new Recorder();
  run(plan, at.zones, { pipes: at.pipes, values: at.values, recorder });
  const [scope = '', id = '', name = ''] = fact.split('/');
  if (name === 'code-load') {
    const loads = loadsBeyond(id, plan, at.zones);
    return loadSteps({ fuelName: plan.fuelName, loads }, at.values);
  }
  if (scope === 'segment') {
    return recorder.steps.filter(
      (step) => step.step === 'group' && step.id === 'gas.section-capacity' && step.about?.['section'] === id,
    );
  }
  const path = pathTo(plan.loads.find((load) => load.id === id)?.node ?? '', at.zones);
  return recorder.steps.filter(
    (step) => step.step === 'group' && step.id === 'gas.section' && path.has(String(step.about?.['section'])),
  );
}

/** Everything connected at or beyond a section, in its own zone and in those behind its regulators. */
function loadsBeyond(id: string, plan: GasPlan, zones: readonly Zone[]): readonly PlannedLoad[] {
  return plan.loads.filter((load) => {
    let node: string | undefined = load.node;
    while (node !== undefined) {
      if (pathTo(node, zones).has(id)) return true;
      const zone: Zone | undefined = zones.find(
        (one) => one.root === node || one.segments.some((segment) => segment.end === node),
      );
      node = zone?.regulator?.from;
    }
    return false;
  });
}

/** Ids of the sections between the head of its zone and a junction. */
export function pathTo(junction: string, zones: readonly Zone[]): ReadonlySet<string> {
  const path = new Set<string>();
  for (const { segments } of zones) {
    let at = segments.find((segment) => segment.end === junction);
    while (at !== undefined) {
      path.add(at.planned.id);
      const { upstream } = at;
      at = segments.find((segment) => segment.planned.id === upstream);
    }
  }
  return path;
}

type Pipes = ReadonlyMap<string, GasPipe>;

interface Call {
  readonly pipes: Pipes;
  readonly values: Values;
  readonly recorder: Recorder | undefined;
}

function run(plan: GasPlan, zones: readonly Zone[], { pipes, values, recorder }: Call): Run {
  const fuel = fuelOf(plan, values);
  const flow = (load: { input: Parameters<Values>[0] }): number => gas.flowOfHeat(fuel, values(load.input));
  const totals = zoneLoads(zones, flow);
  const outputs: Output[] = [];
  const issues: Issue[] = [];
  const starved: Issue[] = [];
  for (const zone of zones) {
    const load = (junction: string): number =>
      zone.loads.filter((one) => one.node === junction).reduce((sum, one) => sum + flow(one), 0) +
      zone.regulators
        .filter((one) => one.from === junction)
        .reduce((sum, one) => sum + (totals.get(one.id) ?? 0), 0);
    const found = sizeZone(zone, { pipes, values, recorder, fuel, load });
    if (!found.ok) issues.push(...found.issues);
    else {
      outputs.push(...found.value.outputs);
      starved.push(...found.value.starved);
    }
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, outputs, issues: starved };
}

interface ZoneCall extends Call {
  readonly fuel: gas.Fuel;
  readonly load: (junction: string) => number;
}

interface Sized {
  readonly outputs: readonly Output[];
  /** Sections that lose more than the pressure they begin with. */
  readonly starved: readonly Issue[];
}

function sizeZone(zone: Zone, call: ZoneCall): Result<Sized> {
  if (zone.segments.length === 0) {
    return ok({ outputs: headerPressures(zone, supplyPressure(zone, call.values)), starved: [] });
  }
  const { pipes, values, recorder, fuel } = call;
  const tree = zoneTree(zone, {
    length: (id) => lengthOf(pipes.get(id)!, values),
    fittings: (id) => pipes.get(id)!.fittings,
    load: call.load,
  });
  if (!tree.ok) return tree;
  const supply = supplyPressure(zone, values);
  const runs = tree.value.sections.map((section) => runOf(pipes.get(section.id)!, { values, supply }));
  const drops = gas.sectionDrops(tree.value, { supplyPressure: supply, fuel, runs }, recorder);
  if (!drops.ok && !drops.issues.every(isStarved)) return drops;
  const starved = drops.ok ? [] : drops.issues.map(ofSection);
  const lengths = runs.map((one) => one.length);
  const longest = Math.max(...gas.runLengths(tree.value, lengths));
  const outputs: Output[] = drops.ok
    ? pressuresAtHeaters(zone, supply, drops.value)
    : heaterPressures(zone, (node) => leftAt(node, zone, drops.issues));
  for (const [index, section] of tree.value.sections.entries()) {
    const carrier = runs[index]?.carrier;
    if (carrier === undefined) continue;
    const pressureDrop = values(designDrop(zone));
    recorder?.open();
    const capacity = gas.carrierCapacity(
      { carrier, length: longest, inletPressure: supply, fuel, pressureDrop },
      recorder,
    );
    if (!capacity.ok) {
      const own = readingPath('gasSegments', section.id, 'length');
      const where = (name: string): string => (name === 'pressureDrop' ? designDrop(zone) : own);
      return fail(...capacity.issues.map((one) => ({ ...one, where: where(one.where) })));
    }
    recorder?.closeGroup({
      id: 'gas.section-capacity',
      value: capacity.value,
      kind: 'standard-gas-flow',
      about: { section: section.id },
    });
    const kind = 'standard-gas-flow';
    outputs.push(
      { fact: `segment/${section.id}/code-capacity`, value: capacity.value, kind },
      { fact: `segment/${section.id}/code-load`, value: tree.value.loads[index] ?? 0, kind },
    );
  }
  return ok({ outputs, starved });
}

function isStarved({ reason }: Issue): boolean {
  return reason === 'outlet-below-atmosphere';
}

/** The engine names a section and what of it; the size is what can be changed. */
function ofSection(issue: Issue): Issue {
  return { ...issue, where: readingPath('gasSegments', sectionOf(issue), 'size') };
}

function sectionOf({ where }: Issue): string {
  return where.split('.', 1)[0] ?? '';
}

/** Gauge pressure (Pa) behind a section that loses all it has: none. On other ways nothing was computed. */
function leftAt(node: string, zone: Zone, issues: readonly Issue[]): number | undefined {
  const path = pathTo(node, [zone]);
  return issues.some((issue) => path.has(sectionOf(issue))) ? 0 : undefined;
}

function supplyPressure(zone: Zone, values: Values): number {
  return values(zone.regulator?.setPressure ?? SET);
}

function designDrop(zone: Zone): Parameters<Values>[0] {
  return zone.regulator === undefined
    ? DESIGN_DROP
    : readingPath('gasRegulators', zone.regulator.id, 'designDrop');
}

function runOf(pipe: GasPipe, at: { readonly values: Values; readonly supply: number }) {
  const carrier = pipe.carrier(at.supply);
  const bore = carrier.type === 'bore' ? carrier.insideDiameter : 0;
  return { carrier, length: lengthOf(pipe, at.values) + pipe.fittings * bore };
}

/** A heater straight on the regulator or meter sees its outlet. */
function headerPressures(zone: Zone, supply: number): Output[] {
  return heaterPressures(zone, () => supply);
}

function pressuresAtHeaters(zone: Zone, supply: number, drops: readonly gas.SectionDrop[]): Output[] {
  const at = new Map([[zone.root, supply]]);
  for (const { planned, end } of zone.segments) {
    at.set(end, drops.find((drop) => drop.id === planned.id)?.outletPressure ?? Number.NaN);
  }
  return heaterPressures(zone, (node) => at.get(node) ?? Number.NaN);
}

function heaterPressures(zone: Zone, at: (node: string) => number | undefined): Output[] {
  return zone.loads
    .filter((load) => load.kind === 'heater')
    .map(({ id, node }) => {
      const fact: FactKey = `heater/${id}/code-inlet-pressure`;
      const value = at(node);
      if (value !== undefined) return { fact, value, kind: 'pressure' };
      return {
        fact,
        unknown: zone.segments.map(({ planned }) => readingPath('gasSegments', planned.id, 'size')),
      };
    });
}
