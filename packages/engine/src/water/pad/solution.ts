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
import type { Station } from './layout.ts';
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

type Solved = Pick<PadSolution, 'iterations' | 'residual'>;

/** Puts the pad into a state and solves it; see `Pad`. */
export function solvePad(pad: Pad, state: PadState): Result<PadSolution> {
  const report = pad.solve(state);
  if (!report.ok) return fail(...report.issues);
  return ok(readPad(pad, report));
}

/** Reads the last solution of a pad. */
function readPad(pad: Pad, { iterations, residual }: Solved): PadSolution {
  const { spec, network, water, places } = pad;
  const flows: number[] = [];
  for (let link = 0; link < network.linkCount; link += 1) flows.push(network.flow(link));
  const at = (station: Station, elevation: number): number =>
    pressureAt(pad, places.station[station], { elevation, velocity: 0 });
  const pumpInletPressure = at('pump-inlet', spec.pump.elevation);
  const pumpOutletPressure = at('pump-outlet', spec.pump.elevation);
  const filterInletPressure = at('filter-inlet', spec.filter.elevation);
  const filterOutletPressure = at('filter-outlet', spec.filter.elevation);
  const points = { pumpInletPressure, pumpOutletPressure, filterInletPressure, filterOutletPressure };
  const heaters = readHeaters(pad, flows);
  return {
    flow: (flows[places.pump] ?? 0) + (flows[places.stopped] ?? 0),
    pumpHead: -network.loss(places.pump),
    pumpInletPressure,
    pumpOutletPressure,
    filterInletPressure,
    filterOutletPressure,
    heaters,
    bypassFlow: places.bypass < 0 ? 0 : (flows[places.bypass] ?? 0),
    basins: readBasins(pad, flows),
    flows,
    water,
    iterations,
    residual,
    issues: boiling(pad, points, heaters),
  };
}

interface Tap {
  readonly elevation: number;
  readonly velocity: number;
}

function pressureAt({ network, water }: Pad, node: number, { elevation, velocity }: Tap): number {
  return pointPressure.kernel({ head: network.potential(node), elevation, velocity, density: water.density });
}

/** Head at a station, m over the datum. */
export function stationHead({ network, places }: Pad, station: Station): number {
  return network.potential(places.station[station]);
}

function readHeaters(pad: Pad, flows: readonly number[]): HeaterPoint[] {
  return pad.places.heaters.map(({ inlet, outlet, link }, i) => {
    const heater = pad.spec.bank?.heaters[i] as PadHeater;
    const flow = flows[link] ?? 0;
    const tap = { elevation: heater.elevation, velocity: tapVelocity(heater, flow) };
    const inletPressure = pressureAt(pad, inlet, tap);
    return { id: heater.id, flow, inletPressure, outletPressure: pressureAt(pad, outlet, tap) };
  });
}

/** Velocity at the tap of a heater's switch, m/s. */
export function tapVelocity(heater: PadHeater, flow: number): number {
  const insideDiameter = heater.tapDiameter;
  return insideDiameter === undefined ? 0 : velocity.kernel({ insideDiameter, flow });
}

function readBasins(pad: Pad, flows: readonly number[]): BasinBalance[] {
  const { spec, layout, places } = pad;
  return spec.basins.map(({ id }) => {
    let net = 0;
    for (const link of places.ports) {
      const part = layout.parts[link];
      if (part?.part !== 'port' || part.basin !== id) continue;
      net += (part.side === 'returns' ? 1 : -1) * (flows[link] ?? 0);
    }
    const edge = spec.spillways?.find((one) => one.from === id);
    if (edge === undefined) return { id, net, spill: 0, spillHead: 0 };
    const spill = Math.max(net, 0);
    return { id, net, spill, spillHead: spillHead.kernel({ flow: spill, width: edge.width }) };
  });
}

function boiling(
  pad: Pad,
  points: Readonly<Record<string, number>>,
  heaters: readonly HeaterPoint[],
): readonly Issue[] {
  const { airPressure } = pad.spec;
  const min = pad.water.vapourPressure;
  const issues: Issue[] = [];
  const look = (where: string, gauge: number): void => {
    const found = airPressure + gauge;
    if (!(found < min)) return;
    const kind = 'absolute-pressure';
    issues.push({ code: 'out-of-range', where, found, min, kind, reason: 'water-boils' });
  };
  for (const where in points) look(where, points[where] ?? Number.NaN);
  for (const one of heaters) look(`heaters.${one.id}.inletPressure`, one.inletPressure);
  for (const one of heaters) look(`heaters.${one.id}.outletPressure`, one.outletPressure);
  return issues;
}
