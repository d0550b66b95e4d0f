/** The parts of the gas picture, each from its record, the solved states and the findings about it. */
import type { Finding } from '@firstfire/reference';
import { recordFacts } from '../facts/record-facts.ts';
import type { JobView } from '../facts/view.ts';
import { type PlannedLoad, SUPPLY } from '../plant/gas/gas-plan.ts';
import type { GasHeaterSeen, GasHung, GasLeg, GasLink, GasNode } from './gas-shown.ts';
import { byState, type GasSurveyed, lacks, type Solved } from './gas-states.ts';
import type { TreeLink, TreeNode } from './gas-tree.ts';

export interface Paint {
  readonly view: JobView;
  readonly read: GasSurveyed;
  readonly solved: Solved;
  readonly findings: readonly Finding[];
}

export function nodeShown(node: TreeNode, paint: Paint): GasNode {
  return {
    id: node.id,
    pressures: byState(paint.solved, (one) => one.pressures.get(node.id)),
    hung: node.loads.map((load) => hungOf(load, paint)),
    branches: node.branches.map(({ link, turned, end }) => ({
      link: linkShown(link, turned, paint),
      end: nodeShown(end, paint),
    })),
    leads: node.leads,
  };
}

export function hungOf({ id, kind, label, input }: PlannedLoad, { read }: Paint): GasHung {
  const value = read.reader.parameters.find((one) => one.reading === input)?.value;
  return { id, kind, name: label, input: value, inputReading: input };
}

export function linkShown(link: TreeLink, turned: boolean, paint: Paint): GasLink {
  return link.type === 'section' ? sectionShown(link, turned, paint) : regulatorShown(link, paint);
}

function sectionShown({ planned }: TreeLink, turned: boolean, paint: Paint): GasLink {
  const { view, read, findings } = paint;
  const { id } = planned;
  const at = (field: string) => recordFacts('gasSegments', view.record('gasSegments', id)).at(field).fact;
  const [material, size, length, fittings] = [at('material'), at('size'), at('length'), at('fittings')];
  const bore = boreOf(id, read);
  const code = findings.find((one) => one.rule === 'gas.section-capacity' && one.subject.id === id);
  return {
    type: 'section',
    id,
    name: nameOf(view, 'gasSegments', id, ''),
    ...(material.state === 'word' ? { material: material.value } : {}),
    ...(size.state === 'word' ? { size: size.value } : {}),
    ...(bore === undefined ? {} : { bore }),
    ...(length.state === 'number' ? { length: length.value } : {}),
    fittings: fittings.state === 'counts' ? fittings.value : {},
    ...between(`segment ${id}`, { from: planned.from, to: planned.to, turned }, paint),
    ...(code === undefined ? {} : { code }),
    missing: lacks(read, 'gasSegments', id),
  };
}

function regulatorShown({ planned }: TreeLink, paint: Paint): GasLink {
  const { view, read, findings } = paint;
  const { id, from, to } = planned;
  const set = recordFacts('gasRegulators', view.record('gasRegulators', id)).at('setPressure').fact;
  const code = findings.find((one) => one.rule === 'gas.regulator-capacity' && one.subject.id === id);
  return {
    type: 'regulator',
    id,
    name: nameOf(view, 'gasRegulators', id, ''),
    fittings: {},
    ...(set.state === 'number' ? { setPressure: set.value } : {}),
    ...between(`regulator ${id}`, { from, to, turned: false }, paint),
    ...(code === undefined ? {} : { code }),
    missing: lacks(read, 'gasRegulators', id),
  };
}

interface Ends {
  readonly from: string;
  readonly to: string;
  readonly turned: boolean;
}

/** Flow away from the supply, and pressure lost that way. */
function between(
  link: string,
  { from, to, turned }: Ends,
  { solved }: Paint,
): Pick<GasLink, 'flow' | 'drop'> {
  const sign = turned ? -1 : 1;
  return {
    flow: byState(solved, ({ flows }) => signed(flows.get(link), sign)),
    drop: byState(solved, ({ pressures }) => {
      const [near, far] = [pressures.get(from), pressures.get(to)];
      return near === undefined || far === undefined ? undefined : signed(near - far, sign);
    }),
  };
}

/** Zero has no side. */
function signed(value: number | undefined, sign: number): number | undefined {
  return value === undefined ? undefined : value * sign + 0;
}

/** EHD 30 is the tubing of the 1 in trade; only the thickness of a line hangs on it. */
const BORE_OF_EHD = 0.0254 / 30;

function boreOf(id: string, { pipes }: GasSurveyed): number | undefined {
  const carrier = pipes.get(id)?.carrier(0);
  if (carrier === undefined) return undefined;
  return carrier.type === 'bore' ? carrier.insideDiameter : carrier.ehd * BORE_OF_EHD;
}

/** The name a record was given; its id, or what else stands for it, where it has none. */
export function nameOf(view: JobView, collection: string, id: string, otherwise = id): string {
  const name = view.record(collection, id).reading('name')?.value;
  return typeof name === 'string' && name !== '' ? name : otherwise;
}

export function heaterSeen(id: string, root: GasNode, paint: Paint): GasHeaterSeen {
  const { view, read } = paint;
  const facts = recordFacts('heaters', view.record('heaters', id));
  const number = (field: string): number | undefined => {
    const { fact } = facts.at(field);
    return fact.state === 'number' ? fact.value : undefined;
  };
  const node = read.plan.loads.find((load) => load.kind === 'heater' && load.id === id)?.node ?? '';
  const way = wayOf(root, paint);
  return {
    id,
    name: nameOf(view, 'heaters', id),
    node,
    pressures: byState(paint.solved, (one) => one.pressures.get(node)),
    least: number('inletLeast'),
    greatest: number('inletGreatest'),
    judged: judgedAt(id, paint),
    way,
    dearest: dearestOf(way),
  };
}

function judgedAt(id: string, { findings }: Paint): GasHeaterSeen['judged'] {
  const of = (rule: string) => findings.find((one) => one.rule === rule && one.subject.id === id);
  const [running, lockUp] = [of('gas.burner-pressure-running'), of('gas.burner-pressure-lock-up')];
  return {
    ...(running === undefined ? {} : { 'everything-on': running }),
    ...(lockUp === undefined ? {} : { 'all-off': lockUp }),
  };
}

/** From the outlet of the service regulator to the heater; the meter is its first piece. */
function wayOf(root: GasNode, paint: Paint): readonly GasLeg[] {
  if (!root.leads) return [];
  const legs: GasLeg[] = paint.read.metered ? [meterLeg(root, paint)] : [];
  let at = root;
  for (;;) {
    const next = at.branches.find(({ end }) => end.leads);
    if (next === undefined) return legs;
    legs.push({ link: next.link, from: at.pressures, to: next.end.pressures, end: next.end });
    at = next.end;
  }
}

function meterLeg(root: GasNode, { solved }: Paint): GasLeg {
  const from = byState(solved, (one) => one.outlet);
  const link: GasLink = {
    type: 'meter',
    id: 'meter',
    name: '',
    fittings: {},
    flow: byState(solved, ({ flows }) => flows.get('meter')),
    drop: byState(solved, ({ outlet, pressures }) => {
      const behind = pressures.get(SUPPLY);
      return outlet === undefined || behind === undefined ? undefined : outlet - behind;
    }),
    missing: [],
  };
  return { link, from, to: root.pressures, end: root };
}

function dearestOf(way: readonly GasLeg[]): string | undefined {
  for (const state of ['everything-on', 'heater-alone'] as const) {
    const known = way.filter(({ link }) => link.type === 'section' && link.drop[state] !== undefined);
    const most = known.sort((a, b) => (b.link.drop[state] ?? 0) - (a.link.drop[state] ?? 0))[0];
    if (most !== undefined) return most.link.id;
  }
  return undefined;
}
