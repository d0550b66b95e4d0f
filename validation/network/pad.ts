/**
 * A water network as data, in the units of its source (ft, inches, US gpm); a pad also carries the flows and heads
 * that an independent program found for it.
 *
 * Source of all pads: networks composed for the purpose and solved with OWA-EPANET 2.2.0 (US EPA's public-domain
 * engine); no published installation is represented. The source suggests a tolerance of 0.05 % on flow and 0.02 ft
 * on head.
 */
export type Points = readonly (readonly [flow: number, head: number])[];

/** Length in ft, inside diameter in inches, roughness (C, or 1/1000 ft), sum of loss coefficients. */
export type PipeRow = readonly [
  id: string,
  from: string,
  to: string,
  length: number,
  diameter: number,
  roughness: number,
  k: number,
];

/** A throttle at a diameter in inches; `null` is shut. */
export type ThrottleRow = readonly [id: string, from: string, to: string, diameter: number, k: number | null];

/** A device with a head-loss curve, by the curve's name. */
export type DeviceRow = readonly [id: string, from: string, to: string, curve: string];

/** A pump by its curve's name and its relative speed; 0 is off. */
export type PumpRow = readonly [id: string, from: string, to: string, curve: string, speed: number];

export interface PipeNetwork {
  readonly id: string;
  readonly friction: 'H-W' | 'D-W';
  /** Viscosity relative to 1.1e-5 ft2/s. */
  readonly viscosity: number;
  /** Water level by reservoir, ft. */
  readonly reservoirs: Readonly<Record<string, number>>;
  /** Draw by node, gpm. */
  readonly demands: Readonly<Record<string, number>>;
  /** Elevation of every other node, ft. */
  readonly elevation: number;
  readonly pipes: readonly PipeRow[];
  /** Pipes with a check valve. */
  readonly checks: readonly string[];
  readonly throttles: readonly ThrottleRow[];
  readonly devices: readonly DeviceRow[];
  readonly pumps: readonly PumpRow[];
  readonly curves: Readonly<Record<string, Points>>;
}

export interface Pad extends PipeNetwork {
  readonly title: string;
  /** Solved: gpm by link, ft by node. */
  readonly flows: Readonly<Record<string, number>>;
  readonly heads: Readonly<Record<string, number>>;
}

/** Nodes in the order of the links, reservoirs first. */
export function nodesOf({ reservoirs, pipes, throttles, devices, pumps }: PipeNetwork): string[] {
  const rows = [...pipes, ...throttles, ...devices, ...pumps];
  return [...new Set([...Object.keys(reservoirs), ...rows.flatMap(([, from, to]) => [from, to])])];
}
