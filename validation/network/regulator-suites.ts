/**
 * Regulators beside EPANET's pressure-reducing valves: one that holds, one that stands wide open because its inlet
 * does not suffice, one that shuts because its outlet stands too high, and two in line with a loop behind them.
 */
import { expectOk, numerics, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';
import { flowCases, headCases, once, withoutReservoirs } from './compare.ts';
import { GPM, hazenWilliams, throttle } from './epanet-laws.ts';
import { ENGINE_VERSION, inputText, type Solved, solveText } from './epanet-run.ts';
import type { PipeRow } from './pad.ts';

const { FOOT } = quantity;
/** EPANET's psi in a foot of water. */
const PSI_PER_FOOT = 0.4333;

/** Setting in psi, loss coefficient when wide open, both at a diameter in inches. */
type ValveRow = readonly [id: string, from: string, to: string, diameter: number, setting: number, k: number];

interface Regulated {
  readonly id: string;
  readonly reservoirs: Readonly<Record<string, number>>;
  readonly demands: Readonly<Record<string, number>>;
  readonly pipes: readonly PipeRow[];
  readonly valves: readonly ValveRow[];
}

const line = (id: string, from: string, to: string, length: number): PipeRow => [
  id,
  from,
  to,
  length,
  2.067,
  150,
  2,
];

const SERVICE = {
  pipes: [line('IN', 'STREET', 'A', 80), line('OUT', 'B', 'HOUSE', 60)],
  valves: [['REG', 'A', 'B', 2.067, 40, 6]],
  demands: { HOUSE: 35 },
} as const;

const NETWORKS: readonly Regulated[] = [
  { ...SERVICE, id: 'holds', reservoirs: { STREET: 180 } },
  { ...SERVICE, id: 'wide open', reservoirs: { STREET: 85 } },
  {
    ...SERVICE,
    id: 'shut',
    reservoirs: { STREET: 180, TOWER: 120 },
    pipes: [...SERVICE.pipes, line('BACK', 'TOWER', 'HOUSE', 30)],
  },
  {
    id: 'two in line, a loop behind',
    reservoirs: { STREET: 240 },
    demands: { C: 12, D: 18, E: 9 },
    pipes: [
      line('IN', 'STREET', 'A', 90),
      line('MID', 'B', 'B2', 120),
      line('P1', 'C', 'D', 70),
      line('P2', 'D', 'E', 50),
      line('P3', 'C', 'E', 140),
    ],
    valves: [
      ['FIRST', 'A', 'B', 2.067, 60, 4],
      ['SECOND', 'B2', 'C', 1.61, 25, 4],
    ],
  },
];

const nodesOf = ({ pipes, valves }: Regulated): string[] => [
  ...new Set([...pipes, ...valves].flatMap(([, from, to]) => [from, to])),
];

function theirs(net: Regulated): Solved {
  const junctions = nodesOf(net).filter((id) => !(id in net.reservoirs));
  const text = inputText(
    {
      JUNCTIONS: junctions.map((id) => [id, 0, net.demands[id] ?? 0]),
      RESERVOIRS: Object.entries(net.reservoirs),
      PIPES: net.pipes.map((row) => [...row, 'OPEN']),
      VALVES: net.valves.map(([id, from, to, diameter, setting, k]) => [
        id,
        from,
        to,
        diameter,
        'PRV',
        setting,
        k,
      ]),
    },
    [['HEADLOSS', 'H-W']],
  );
  return solveText(text);
}

function ours(net: Regulated): Solved {
  const nodes = nodesOf(net).map((id): numerics.NodeSpec => {
    const level = net.reservoirs[id];
    return level === undefined ? { id, demand: (net.demands[id] ?? 0) * GPM } : { id, fixed: level * FOOT };
  });
  const pipes = net.pipes.map(([id, from, to, length, diameter, roughness, k]): numerics.LinkSpec => {
    return { id, from, to, law: hazenWilliams({ length, diameter, roughness, k }) };
  });
  const valves = net.valves.map(([id, from, to, diameter, setting, k]): numerics.LinkSpec => {
    const open = throttle(diameter, k) as { readonly r: number };
    const outlet = { set: (setting / PSI_PER_FOOT) * FOOT };
    return { id, from, to, law: { type: 'regulator', outlet, open: open.r } };
  });
  const links = [...pipes, ...valves];
  const network = expectOk(numerics.buildNetwork({ nodes, links }));
  const report = network.solve({ flowTolerance: 1e-12, headTolerance: 1e-12 });
  if (!report.ok) throw new Error(`${net.id}: ${JSON.stringify(report.issues)}`);
  return {
    flows: new Map(links.map(({ id }, i) => [id, network.flow(i) / GPM])),
    heads: new Map(nodes.map(({ id }, n) => [id, network.potential(n) / FOOT])),
  };
}

const runs = NETWORKS.map((net) => ({
  id: net.id,
  theirs: withoutReservoirs(theirs(net), net.reservoirs),
  ours: once(() => ours(net)),
}));

const SHARED = {
  area: 'network',
  kind: 'library',
  document: `EPANET ${ENGINE_VERSION} through epanet-js 0.9.0`,
} as const;

export const REGULATOR_SUITES: readonly Suite[] = [
  {
    ...SHARED,
    id: 'network/regulators-flows',
    at: 'four networks with pressure-reducing valves, flow of every link',
    quantity: 'flow, US gpm',
    band: { relative: 1e-6, absolute: 1e-6 },
    bandBecause: 'the goal set for two solvers of the same equations; the absolute part is for flows of zero',
    cases: runs.flatMap((run) => flowCases(run.id, run.theirs, run.ours)),
    misfits: [
      {
        cases: ['shut IN', 'shut OUT', 'shut BACK'],
        because:
          'EPANET lets 3e-4 gpm leak through a shut valve, which its neighbours show; ours lets nothing through',
      },
    ],
  },
  {
    ...SHARED,
    id: 'network/regulators-heads',
    at: 'the same, head of every junction',
    quantity: 'head, ft',
    band: { relative: 1e-6 },
    bandBecause: 'the goal set for two solvers of the same equations',
    cases: runs.flatMap((run) => headCases(run.id, run.theirs, run.ours)),
  },
];
