/**
 * EPANET beside ours: a network written as its input text, solved by the general-purpose package `epanet-js` with
 * its tightest settings, flows (gpm) and heads (ft) read back.
 */
import { Project, Workspace } from 'epanet-js';
import { nodesOf, type PipeNetwork, type Points } from './pad.ts';

export interface Solved {
  readonly flows: ReadonlyMap<string, number>;
  readonly heads: ReadonlyMap<string, number>;
}

const FLOW = 8;
const HEAD = 10;
const NODES = 0;
const LINKS = 2;
const ITERATIONS = 0;
const TRIALS = 200;

const workspace = new Workspace();
await workspace.loadModule();

/** The engine behind `epanet-js`, as its version number prints: 2.3.5. */
export const ENGINE_VERSION = String(workspace.version).replace(/^(\d)0(\d)0(\d)$/, '$1.$2.$3');

/** A project holding the network; the caller closes it. */
export function openProject(text: string): Project {
  const project = new Project(workspace);
  workspace.writeFile('network.inp', text);
  project.open('network.inp', 'network.rpt', 'network.bin');
  return project;
}

export function solveText(text: string): Solved {
  const project = openProject(text);
  project.openH();
  project.initH(0);
  project.runH();
  if (project.getStatistic(ITERATIONS) > TRIALS) throw new Error('EPANET did not converge');
  const flows = new Map<string, number>();
  const heads = new Map<string, number>();
  for (let i = 1; i <= project.getCount(LINKS); i += 1)
    flows.set(project.getLinkId(i), project.getLinkValue(i, FLOW));
  for (let i = 1; i <= project.getCount(NODES); i += 1)
    heads.set(project.getNodeId(i), project.getNodeValue(i, HEAD));
  project.closeH();
  project.close();
  return { flows, heads };
}

/** Sections of an input text: heading and rows of cells. */
export type Sections = Readonly<Record<string, readonly (readonly (string | number)[])[]>>;

export function inputText(sections: Sections, options: readonly (readonly (string | number)[])[]): string {
  const all: Sections = {
    ...sections,
    TIMES: [['DURATION', 0]],
    OPTIONS: [
      ['UNITS', 'GPM'],
      ['SPECIFIC GRAVITY', 1],
      ['TRIALS', TRIALS],
      ['ACCURACY', 0.00001],
      ['HEADERROR', 1e-7],
      ['FLOWCHANGE', 1e-7],
      ...options,
    ],
  };
  const blocks = Object.entries(all).map(([name, rows]) =>
    [`[${name}]`, ...rows.map((row) => row.map(cell).join(' '))].join('\n'),
  );
  return `${blocks.join('\n')}\n[END]\n`;
}

/** Its reader knows no exponents in every place; decimals are safe. */
function cell(value: string | number): string {
  return typeof value === 'string' ? value : value.toFixed(12).replace(/\.?0+$/, '');
}

/** A network as input text. */
export function networkText(net: PipeNetwork): string {
  const { pipes, throttles, devices, pumps, checks, reservoirs } = net;
  const junctions = nodesOf(net).filter((id) => !(id in reservoirs));
  const status = (id: string): string => (checks.includes(id) ? 'CV' : 'OPEN');
  const shut = throttles.filter(([, , , , k]) => k === null).map(([id]) => [id, 'CLOSED']);
  const off = pumps.filter(([, , , , speed]) => speed === 0).map(([id]) => [id, 'CLOSED']);
  const sections: Sections = {
    JUNCTIONS: junctions.map((id) => [id, net.elevation, net.demands[id] ?? 0]),
    RESERVOIRS: Object.entries(reservoirs),
    PIPES: pipes.map((row) => [...row, status(row[0])]),
    PUMPS: pumps.map(([id, from, to, curve, speed]) => [id, from, to, 'HEAD', curve, 'SPEED', speed || 1]),
    VALVES: [
      ...devices.map(([id, from, to, curve]) => [id, from, to, 2, 'GPV', curve, 0]),
      ...throttles.map(([id, from, to, diameter, k]) => [id, from, to, diameter, 'TCV', k ?? 0, 0]),
    ],
    STATUS: [...shut, ...off],
    CURVES: curveRows(net.curves),
  };
  return inputText(sections, [
    ['HEADLOSS', net.friction],
    ['VISCOSITY', net.viscosity],
  ]);
}

function curveRows(curves: Readonly<Record<string, Points>>): (string | number)[][] {
  return Object.entries(curves).flatMap(([id, points]) => points.map(([q, h]) => [id, q, h]));
}
