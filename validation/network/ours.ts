/** The same networks solved by the engine: with EPANET's laws, or with the engine's own. */
import { expectOk, numerics, quantity } from '@firstfire/engine';
import * as epanet from './epanet-laws.ts';
import type { Solved } from './epanet-run.ts';
import { nodesOf, type PipeNetwork, type PipeRow } from './pad.ts';

const { FOOT, INCH } = quantity;

/** As tight as the settings of the other program. */
const TIGHT = { flowTolerance: 1e-12, headTolerance: 1e-12 };

type LinkSpec = numerics.LinkSpec;

/** How pipes, throttles and shut links become laws. */
export interface Laws {
  readonly pipe: (row: PipeRow, net: PipeNetwork) => Pick<LinkSpec, 'law' | 'oneWay'>;
  readonly throttle: (diameter: number, k: number | null) => Pick<LinkSpec, 'law' | 'closed'>;
}

export const EPANET_LAWS: Laws = {
  pipe: ([id, , , length, diameter, roughness, k], net) => {
    const pipe = { length, diameter, roughness, k };
    const law =
      net.friction === 'H-W' ? epanet.hazenWilliams(pipe) : epanet.darcyWeisbach(pipe, net.viscosity);
    return { law: net.checks.includes(id) ? epanet.checked(law) : law };
  },
  throttle: (diameter, k) => ({ law: epanet.throttle(diameter, k) }),
};

/** Colebrook for Darcy–Weisbach, standard gravity, real check valves and shut links. */
export const OWN_LAWS: Laws = {
  pipe: ([id, , , length, diameter, roughness, k], net) => {
    const oneWay = net.checks.includes(id);
    const inside = diameter * INCH;
    const viscosity = 1.1e-5 * FOOT ** 2 * net.viscosity;
    const size = { length: length * FOOT, diameter: inside, viscosity };
    if (net.friction === 'D-W')
      return { oneWay, law: { type: 'darcy', ...size, roughness: (roughness / 1000) * FOOT, k } };
    const friction = epanet.hazenWilliams({ length, diameter, roughness, k: 0 });
    return { oneWay, law: { ...friction, m: velocityHead(k, inside) } as numerics.LinkLaw };
  },
  throttle: (diameter, k) => ({
    closed: k === null,
    law: { type: 'power', r: velocityHead(k ?? 0, diameter * INCH), n: 2 },
  }),
};

function velocityHead(k: number, diameter: number): number {
  return k / (2 * quantity.STANDARD_GRAVITY * ((Math.PI / 4) * diameter ** 2) ** 2);
}

export function networkSpec(net: PipeNetwork, laws: Laws): numerics.NetworkSpec {
  const nodes = nodesOf(net).map((id) => {
    const level = net.reservoirs[id];
    return level === undefined
      ? { id, demand: (net.demands[id] ?? 0) * epanet.GPM }
      : { id, fixed: level * FOOT };
  });
  const links: LinkSpec[] = [
    ...net.pipes.map((row) => ({ id: row[0], from: row[1], to: row[2], ...laws.pipe(row, net) })),
    ...net.throttles.map(([id, from, to, d, k]) => ({ id, from, to, ...laws.throttle(d, k) })),
    ...net.devices.map(([id, from, to, curve]) => ({ id, from, to, law: epanet.device(net.curves[curve]!) })),
    ...net.pumps.map(([id, from, to, curve, speed]) => ({
      id,
      from,
      to,
      law: speed === 0 && laws === EPANET_LAWS ? epanet.closed() : epanet.pump(net.curves[curve]!, speed),
    })),
  ];
  return { nodes, links };
}

/** Solves, and gives flows in gpm and heads in ft. */
export function solveOurs(net: PipeNetwork, laws: Laws): Solved & { readonly iterations: number } {
  const spec = networkSpec(net, laws);
  const network = expectOk(numerics.buildNetwork(spec));
  const report = network.solve(TIGHT);
  if (!report.ok) throw new Error(`${net.id}: ${JSON.stringify(report.issues)}`);
  const shut = new Set([
    ...net.throttles.filter(([, , , , k]) => k === null).map(([id]) => id),
    ...net.pumps.filter(([, , , , speed]) => speed === 0).map(([id]) => id),
  ]);
  // What leaks through a shut link is inside both programs and printed by neither.
  const flow = (id: string): number => {
    const q = network.flow(network.linkIndex(id)) / epanet.GPM;
    return shut.has(id) || (net.checks.includes(id) && q < 0) ? 0 : q;
  };
  return {
    iterations: report.iterations,
    flows: new Map(spec.links.map(({ id }) => [id, flow(id)])),
    heads: new Map(spec.nodes.map(({ id }) => [id, network.potential(network.nodeIndex(id)) / FOOT])),
  };
}
