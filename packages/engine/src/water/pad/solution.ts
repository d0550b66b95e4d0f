/**
 * What a solved pad shows: flows, pressures at every point, heater flows.
 *
 *     p = ρ·(g·(H − z) − V²/2)
 *
 * at a tap of height z where the water passes at V; at a tap that feels no velocity V is zero. A pressure below the
 * vapour pressure of the water cannot be: it is reported as an issue with the point's name, and the rest stands.
 *
 * Source: energy equation. Errors: see `solvePad`.
 *
 * Worked example: H = 10 m, z = 1 m, no velocity, 997 kg/m3 → 88.0 kPa.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import { velocity } from '../pipe/velocity.ts';
import { spillHead } from '../pool/spill.ts';
import type { WaterProperties } from '../water-at.ts';
import type { Pad } from './pad.ts';
import { pointPressure } from './point-pressure.ts';
import type { PadHeater, PadState } from './spec.ts';

export interface HeaterPoint {
  readonly id: string;
  /** m3/s. */
  readonly flow: number;
  /** Gauge, at the inlet header where the water-pressure switch sits, Pa. */
  readonly inletPressure: number;
  /** Gauge, at the same height on the outlet, Pa. */
  readonly outletPressure: number;
}

export interface BasinBalance {
  readonly id: string;
  /** Into the basin less out of it through the pad, m3/s. */
  readonly net: number;
  /** What runs over its spillway, m3/s. */
  readonly spill: number;
  /** Height of that water over the edge, m; the network leaves it out of the basin's level. */
  readonly spillHead: number;
}

export interface PadSolution {
  /** Through the pump, m3/s; negative where water runs back through a pump that stands. */
  readonly flow: number;
  /** m. */
  readonly pumpHead: number;
  /** Gauge, Pa; at the pump's height. */
  readonly pumpInletPressure: number;
  readonly pumpOutletPressure: number;
  /** Gauge, Pa; at the height of the filter's gauge. */
  readonly filterInletPressure: number;
  readonly filterOutletPressure: number;
  readonly heaters: readonly HeaterPoint[];
  /** m3/s. */
  readonly bypassFlow: number;
  readonly basins: readonly BasinBalance[];
  /** Flow of every link of the layout, m3/s. */
  readonly flows: readonly number[];
  readonly water: WaterProperties;
  readonly iterations: number;
  readonly residual: number;
  /** Points at which the water would boil; empty on a pad that can run. */
  readonly issues: readonly Issue[];
}

/** Puts the pad into a state and solves it; see `Pad`. */
export function solvePad(pad: Pad, state: PadState): Result<PadSolution> {
  const report = pad.solve(state);
  if (!report.ok) return fail(...report.issues);
  const { iterations, residual } = report;
  return ok({ ...readPad(pad), iterations, residual });
}

/** Reads the last solution of a pad. */
function readPad(pad: Pad): Omit<PadSolution, 'iterations' | 'residual'> {
  const { spec, layout, network, water } = pad;
  const flows = layout.parts.map((_, link) => network.flow(link));
  const pumpLink = layout.parts.findIndex((part) => part.part === 'pump' && !part.stopped);
  const stoppedLink = layout.parts.findIndex((part) => part.part === 'pump' && part.stopped);
  const at = (node: string, elevation: number): number =>
    pointPressure.kernel({ head: padHead(pad, node), elevation, velocity: 0, density: water.density });
  const { stationNode } = layout;
  const points = {
    pumpInletPressure: at(stationNode['pump-inlet'], spec.pump.elevation),
    pumpOutletPressure: at(stationNode['pump-outlet'], spec.pump.elevation),
    filterInletPressure: at(stationNode['filter-inlet'], spec.filter.elevation),
    filterOutletPressure: at(stationNode['filter-outlet'], spec.filter.elevation),
  };
  const heaters = readHeaters(pad, flows);
  return {
    flow: (flows[pumpLink] ?? 0) + (flows[stoppedLink] ?? 0),
    pumpHead: -network.loss(pumpLink),
    ...points,
    heaters,
    bypassFlow: pad.bypassLink < 0 ? 0 : (flows[pad.bypassLink] ?? 0),
    basins: readBasins(pad, flows),
    flows,
    water,
    issues: boiling(pad, points, heaters),
  };
}

/** Head of a node of the layout, m over the datum. */
export function padHead(pad: Pad, node: string): number {
  return pad.network.potential(pad.network.nodeIndex(node));
}

function readHeaters(pad: Pad, flows: readonly number[]): HeaterPoint[] {
  const { density } = pad.water;
  return pad.layout.heaterNodes.map(({ inlet, outlet, link }, i) => {
    const heater = pad.spec.bank?.heaters[i] as PadHeater;
    const flow = flows[link] ?? 0;
    const tap = { elevation: heater.elevation, velocity: tapVelocity(heater, flow), density };
    const inletPressure = pointPressure.kernel({ ...tap, head: padHead(pad, inlet) });
    const outletPressure = pointPressure.kernel({ ...tap, head: padHead(pad, outlet) });
    return { id: heater.id, flow, inletPressure, outletPressure };
  });
}

/** Velocity at the tap of a heater's switch, m/s. */
export function tapVelocity(heater: PadHeater, flow: number): number {
  const insideDiameter = heater.tapDiameter;
  return insideDiameter === undefined ? 0 : velocity.kernel({ insideDiameter, flow });
}

function readBasins(pad: Pad, flows: readonly number[]): BasinBalance[] {
  const { spec, layout } = pad;
  const net = new Map(spec.basins.map((basin) => [basin.id, 0]));
  layout.parts.forEach((part, link) => {
    if (part.part !== 'port') return;
    const into = (part.side === 'returns' ? 1 : -1) * (flows[link] ?? 0);
    net.set(part.basin, (net.get(part.basin) ?? 0) + into);
  });
  return spec.basins.map(({ id }) => {
    const edge = spec.spillways?.find((one) => one.from === id);
    const own = net.get(id) ?? 0;
    const spill = edge ? Math.max(own, 0) : 0;
    return {
      id,
      net: own,
      spill,
      spillHead: edge ? spillHead.kernel({ flow: spill, width: edge.width }) : 0,
    };
  });
}

function boiling(
  pad: Pad,
  points: Readonly<Record<string, number>>,
  heaters: readonly HeaterPoint[],
): Issue[] {
  const { airPressure } = pad.spec;
  const min = pad.water.vapourPressure;
  const all: [string, number][] = [
    ...Object.entries(points),
    ...heaters.map((one): [string, number] => [`heaters.${one.id}.inletPressure`, one.inletPressure]),
    ...heaters.map((one): [string, number] => [`heaters.${one.id}.outletPressure`, one.outletPressure]),
  ];
  return all
    .filter(([, gauge]) => airPressure + gauge < min)
    .map(([where, gauge]) => ({
      code: 'out-of-range',
      where,
      found: airPressure + gauge,
      min,
      kind: 'absolute-pressure',
      reason: 'water-boils',
    }));
}
