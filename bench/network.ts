/**
 * The water network beside EPANET: one valve changed and the network solved again, on equipment pads and on looped
 * grids of growing size.
 *
 * Both programs solve the same networks with the same link laws (EPANET's own), each to its tight settings, and end
 * at the same flows, or the comparison would be worth nothing. They take turns, batch by batch, in one process.
 *
 * Run by itself: `node bench/network.ts`.
 */
import { expectOk, numerics } from '@firstfire/engine';
import type { Project } from 'epanet-js';
import { composeNetwork } from '../validation/network/composed.ts';
import { GPM, throttle } from '../validation/network/epanet-laws.ts';
import { networkText, openProject } from '../validation/network/epanet-run.ts';
import { EPANET_LAWS, networkSpec } from '../validation/network/ours.ts';
import type { PipeNetwork } from '../validation/network/pad.ts';
import { PADS } from '../validation/network/pads/index.ts';
import { type BenchRow, microseconds } from './measure.ts';

/** EPANET's numbers for a link's loss coefficient, its setting and its flow, and for a solve from afresh. */
const MINOR_LOSS = 3;
const SETTING = 5;
const FLOW = 8;
const AFRESH = 10;
const ON = 0;

/** One network in both programs, and the valve that is turned. */
interface Both {
  readonly net: PipeNetwork;
  readonly ours: numerics.Network;
  readonly project: Project;
  readonly oursTurn: (k: number) => void;
  readonly theirsTurn: (k: number) => void;
  /** Our flow and theirs in the turned valve, gpm. */
  readonly flows: () => readonly [number, number];
}

function both(net: PipeNetwork): Both {
  const ours = expectOk(numerics.buildNetwork(networkSpec(net, EPANET_LAWS)));
  const project = openProject(networkText(net));
  const [valve] = net.throttles;
  const pipe = net.pipes.find(([id]) => id === 'BI1') ?? net.pipes[0]!;
  const id = valve ? valve[0] : pipe[0];
  const link = ours.linkIndex(id);
  const index = project.getLinkIndex(id);
  const settings = valve ? [valve[4] ?? 10, 2 * (valve[4] ?? 10)] : [pipe[6], 2 * pipe[6] + 4];
  const laws = settings.map((k) =>
    valve
      ? throttle(valve[3], k)
      : EPANET_LAWS.pipe([...pipe.slice(0, 6), k] as unknown as typeof pipe, net).law,
  );
  return {
    net,
    ours,
    project,
    oursTurn: (k) => ours.setLaw(link, laws[k % 2]!),
    theirsTurn: (k) => project.setLinkValue(index, valve ? SETTING : MINOR_LOSS, settings[k % 2]!),
    flows: () => [ours.flow(link) / GPM, project.getLinkValue(index, FLOW)],
  };
}

interface Pair {
  readonly ours: number;
  readonly theirs: number;
}

/** Medians (µs a call) of two works that take turns in batches of about a twentieth of a millisecond and more. */
function sideBySide(oursWork: (k: number) => void, theirsWork: (k: number) => void, seconds = 0.6): Pair {
  const ours = counted(oursWork);
  const theirs = counted(theirsWork);
  const batch = Math.max(1, Math.round(100 / Math.max(1, batchOf(ours, 40), batchOf(theirs, 40))));
  const times: { ours: number[]; theirs: number[] } = { ours: [], theirs: [] };
  const end = performance.now() + seconds * 1000;
  while (performance.now() < end || times.ours.length < 15) {
    times.ours.push(batchOf(ours, batch));
    times.theirs.push(batchOf(theirs, batch));
  }
  return { ours: median(times.ours), theirs: median(times.theirs) };
}

/** Counts its own calls, so that every call turns the valve the other way, whatever the size of a batch. */
function counted(work: (k: number) => void): () => void {
  let calls = 0;
  return () => {
    work(calls);
    calls += 1;
  };
}

function batchOf(work: () => void, batch: number): number {
  const start = performance.now();
  for (let k = 0; k < batch; k += 1) work();
  return ((performance.now() - start) * 1000) / batch;
}

function median(times: number[]): number {
  // The first half is warm-up.
  const settled = times.slice(times.length >> 1).sort((a, b) => a - b);
  return settled[settled.length >> 1]!;
}

function solveOurs(network: numerics.Network, cold = false): void {
  const report = network.solve({ cold });
  if (!report.ok) throw new Error(JSON.stringify(report.issues));
}

/** Turn after turn, both programs must end at the same flow. */
function agree({ net, ours, project, oursTurn, theirsTurn, flows }: Both): void {
  for (const k of [0, 1]) {
    oursTurn(k);
    solveOurs(ours);
    theirsTurn(k);
    project.initH(AFRESH);
    project.runH();
    const [a, b] = flows();
    if (!(Math.abs(a / b - 1) < 1e-5)) throw new Error(`${net.id}: ${a} against ${b}`);
  }
}

interface Compared {
  readonly name: string;
  readonly pair: Pair;
  readonly goal?: number;
  readonly note?: string;
}

function row({ name, pair, goal, note }: Compared): BenchRow {
  const ratio = pair.theirs / pair.ours;
  return {
    name,
    ours: microseconds(pair.ours),
    against: microseconds(pair.theirs),
    ratio: `${ratio.toPrecision(3)} × as fast`,
    ...(goal === undefined ? {} : { goal: `${goal} ×`, met: ratio >= goal }),
    ...(note === undefined ? {} : { note }),
  };
}

function padRows(net: PipeNetwork, nodes: number): BenchRow[] {
  const two = both(net);
  const { ours, project, oursTurn, theirsTurn } = two;
  const change = (k: number): void => {
    oursTurn(k);
    solveOurs(ours);
  };
  const title = `pad of ${nodes} nodes`;
  const whole = sideBySide(change, (k) => {
    theirsTurn(k);
    project.solveH();
  });
  project.openH();
  project.initH(ON);
  agree(two);
  const bare = sideBySide(change, () => {
    project.initH(AFRESH);
    project.runH();
  });
  const quickest = sideBySide(change, (k) => {
    theirsTurn(k);
    project.initH(ON);
    project.runH();
  });
  const cold = sideBySide(
    () => solveOurs(ours, true),
    () => {
      project.initH(AFRESH);
      project.runH();
    },
  );
  project.closeH();
  project.close();
  return [
    row({
      name: `${title}: a valve changed and solved again, against the same through epanet-js`,
      pair: whole,
      goal: 5,
      note: 'setLinkValue, solveH',
    }),
    row({
      name: `${title}: the same, against its bare solve without any change`,
      pair: bare,
      goal: 1,
      note: 'initH with flows reset, runH; hydraulics kept open',
    }),
    row({
      name: `${title}: the same, against its quickest way`,
      pair: quickest,
      note: 'setLinkValue, initH keeping the flows, runH; hydraulics kept open',
    }),
    row({ name: `${title}: solved afresh by both`, pair: cold, note: 'nothing kept of the last solution' }),
  ];
}

function growthRows(links: number): BenchRow[] {
  const two = both(composeNetwork({ links, seed: 2, friction: 'H-W' }));
  const { ours, project, oursTurn, theirsTurn } = two;
  project.openH();
  project.initH(ON);
  agree(two);
  const change = sideBySide(
    (k) => {
      oursTurn(k);
      solveOurs(ours);
    },
    (k) => {
      theirsTurn(k);
      project.initH(ON);
      project.runH();
    },
  );
  const cold = sideBySide(
    () => solveOurs(ours, true),
    () => {
      project.initH(AFRESH);
      project.runH();
    },
  );
  project.closeH();
  project.close();
  return [
    row({ name: `looped grid of ${ours.linkCount} links: a valve changed and solved again`, pair: change }),
    row({ name: `looped grid of ${ours.linkCount} links: solved afresh`, pair: cold }),
  ];
}

/** Rows of the bench page: ours, EPANET's, and how many times faster ours is. */
export function networkBench(): readonly BenchRow[] {
  const pads = [
    ['pad02', 8],
    ['pad08', 22],
  ] as const;
  return [
    ...pads.flatMap(([id, nodes]) => padRows(PADS.find((pad) => pad.id === id)!, nodes)),
    ...[10, 100, 1000, 5000].flatMap(growthRows),
  ];
}

if (import.meta.main) console.table(networkBench());
