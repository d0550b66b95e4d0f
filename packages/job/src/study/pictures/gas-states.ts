/**
 * Pressures and flows of the gas piping in its three states, by the physical model of the plant, as far as they can be
 * known. What is missing leaves the rest standing: a section without a length hides what lies behind it and nothing
 * else, for the flow into it is still the sum of what hangs there; an appliance without an input hides only the
 * states in which it runs.
 */
import { gas, type Issue } from '@firstfire/engine';
import { SurveyReader } from '../facts/survey-reader.ts';
import { type JobView, type ReadingPath, readingPath } from '../facts/view.ts';
import { takeFuel } from '../plant/gas/fuel.ts';
import { type GasPlan, gasPlan, type PlannedLoad, SUPPLY } from '../plant/gas/gas-plan.ts';
import {
  GAS_STATES,
  type GasLayout,
  type GasState,
  gasSystemSpec,
  namedIssues,
  takeRegulator,
  takeSupply,
} from '../plant/gas/physical-system.ts';
import { type GasPipe, gasPipes } from '../plant/gas/pipes.ts';
import { nodeReading } from '../plant/gas/zones.ts';
import { ownValuesOf } from '../plant/model.ts';
import type { ByState } from './gas-shown.ts';
import type { GasTreeDrawn, TreeLink, TreeNode } from './gas-tree.ts';

export const STATES = Object.keys(GAS_STATES) as readonly GasState[];

/** The gas system as read: what of it is known, and what of each part is not. */
export interface GasSurveyed {
  readonly plan: GasPlan;
  readonly pipes: ReadonlyMap<string, GasPipe>;
  readonly metered: boolean;
  readonly reader: SurveyReader;
}

export function surveyed(view: JobView): GasSurveyed {
  const reader = new SurveyReader(view);
  const plan = gasPlan(reader);
  takeFuel(reader, plan.fuelName);
  const pipes = gasPipes(reader, plan);
  const metered = takeSupply(reader, plan);
  for (const { id } of plan.regulators) takeRegulator(reader, id);
  return { plan, pipes, metered, reader };
}

/** Readings of a record that are missing or cannot be what they say. */
export function lacks({ reader }: GasSurveyed, collection: string, id: string): readonly ReadingPath[] {
  const own = `${collection}/${id}/`;
  const wrong = reader.wrong.map((issue) => issue.where).filter((where) => where.startsWith(own));
  return [
    ...new Set([...reader.missing.filter((path) => path.startsWith(own)), ...(wrong as ReadingPath[])]),
  ];
}

export interface StateSolved {
  /** Gauge, Pa, by junction; those that cannot be known are left out. */
  readonly pressures: ReadonlyMap<string, number>;
  /** Standard m3/s, by the solver's name of the link, positive from → to. */
  readonly flows: ReadonlyMap<string, number>;
  /** At the outlet of the service regulator, ahead of the meter. */
  readonly outlet: number | undefined;
  /** Readings without which nothing of this state, or not all of it, can be known. */
  readonly missing: readonly ReadingPath[];
  readonly issues: readonly Issue[];
}

function nothing(missing: readonly ReadingPath[], issues: readonly Issue[] = []): StateSolved {
  return {
    pressures: new Map(),
    flows: new Map(),
    outlet: undefined,
    missing,
    issues,
  };
}

/** One state of the system; `heater` is the one that runs when it runs alone. */
export function solveState(
  read: GasSurveyed,
  tree: GasTreeDrawn,
  { state, heater }: { readonly state: GasState; readonly heater: string | undefined },
): StateSolved {
  if (state === 'heater-alone' && heater === undefined) return nothing([]);
  const running = read.plan.loads.filter((load) => runs(load, state, heater));
  const needed = [...lackingHead(read), ...running.flatMap((load) => lackingLoad(load, read, tree))];
  if (needed.length > 0) return nothing([...new Set(needed)]);
  const known = knownPart(read, tree, running);
  if (known.open.length > 0) return nothing(known.open);
  const layout: GasLayout = { plan: known.plan, pipes: read.pipes, metered: read.metered };
  const system = gas.compileGasSystem(gasSystemSpec(layout, ownValuesOf(read.reader.parameters)));
  if (!system.ok) return nothing([], namedIssues(system.issues, layout));
  const solved = system.value.solve(GAS_STATES[state](heater ?? ''));
  if (!solved.ok) return nothing([], namedIssues(solved.issues, layout));
  // Where burners starve, what lies behind an unknown section decides how much: nothing is known then.
  if (known.hidden.length > 0 && solved.value.starved.length > 0) return nothing(known.hidden);
  return standing(solved.value, { layout, hidden: known.hidden });
}

function runs(load: PlannedLoad, state: GasState, heater: string | undefined): boolean {
  if (state === 'everything-on') return true;
  return state === 'heater-alone' && load.kind === 'heater' && load.id === heater;
}

function lackingHead(read: GasSurveyed): readonly ReadingPath[] {
  const head = lacks(read, 'gasSupply', '-').filter((path) => !path.startsWith('gasSupply/-/existingLoad'));
  return [...head, ...lacks(read, 'site', '-')];
}

/** What keeps a running load's flow from being known, or from being put on the piping. */
function lackingLoad(load: PlannedLoad, { reader }: GasSurveyed, tree: GasTreeDrawn): readonly ReadingPath[] {
  const input = reader.parameters.some((one) => one.reading === load.input) ? [] : [load.input];
  return tree.reached.has(load.node) ? input : [...input, nodeReading(load) as ReadingPath];
}

interface KnownPart {
  readonly plan: GasPlan;
  /** What hides a part behind it. */
  readonly hidden: readonly ReadingPath[];
  /** What leaves everything open: an unknown section of a loop. */
  readonly open: readonly ReadingPath[];
}

/** The part that is known throughout; loads behind an unknown section stand where it begins. */
function knownPart(read: GasSurveyed, tree: GasTreeDrawn, running: readonly PlannedLoad[]): KnownPart {
  const at = new Map<string, string>();
  const links = new Set<TreeLink['planned']>();
  const hidden: ReadingPath[] = [];
  const walk = (node: TreeNode, stands: string): void => {
    at.set(node.id, stands);
    for (const { link, end } of node.branches) {
      const missing = stands === node.id ? lacksOf(link, read) : [];
      hidden.push(...missing);
      if (stands === node.id && missing.length === 0) links.add(link.planned);
      walk(end, links.has(link.planned) ? end.id : stands);
    }
  };
  walk(tree.root, SUPPLY);
  const open = tree.closing.flatMap((planned) => lacksOf({ type: 'section', planned }, read));
  const { plan } = read;
  const segments = plan.segments.filter((one) => links.has(one) || tree.closing.includes(one));
  const regulators = plan.regulators.filter((one) => links.has(one));
  const loads = running.map((load) => ({ ...load, node: at.get(load.node) ?? load.node }));
  return { plan: { ...plan, segments, regulators, loads }, hidden, open };
}

function lacksOf({ type, planned }: TreeLink, read: GasSurveyed): readonly ReadingPath[] {
  const missing = lacks(read, type === 'section' ? 'gasSegments' : 'gasRegulators', planned.id);
  if (missing.length > 0 || type === 'regulator' || read.pipes.has(planned.id)) return missing;
  return [readingPath('gasSegments', planned.id, 'size')];
}

function standing(
  solved: gas.GasSolution,
  { layout, hidden }: { readonly layout: GasLayout; readonly hidden: readonly ReadingPath[] },
): StateSolved {
  const { plan, metered } = layout;
  const nodes = new Set([
    SUPPLY,
    ...[...plan.segments, ...plan.regulators].flatMap(({ from, to }) => [from, to]),
  ]);
  const links = [
    ...(metered ? ['meter'] : []),
    ...plan.segments.map(({ id }) => `segment ${id}`),
    ...plan.regulators.map(({ id }) => `regulator ${id}`),
  ];
  return {
    pressures: new Map([...nodes].map((node) => [node, solved.pressure(node)])),
    flows: new Map(links.map((link) => [link, solved.flow(link)])),
    outlet: solved.pressure(metered ? 'meter' : SUPPLY),
    missing: hidden,
    issues: [],
  };
}

export type Solved = Readonly<Record<GasState, StateSolved>>;

export function eachState<T>(of: (state: GasState) => T): Readonly<Record<GasState, T>> {
  return {
    'all-off': of('all-off'),
    'heater-alone': of('heater-alone'),
    'everything-on': of('everything-on'),
  };
}

/** A figure of each state in which it is known. */
export function byState(solved: Solved, of: (one: StateSolved) => number | undefined): ByState {
  const known = STATES.map((state) => [state, of(solved[state])] as const).filter(
    ([, value]) => value !== undefined,
  );
  return Object.fromEntries(known);
}
