/**
 * What a link does: the loss of potential from its `from` end to its `to` end as a function of flow.
 *
 * The potential is whatever the caller balances: head in metres for water, pressure or pressure squared for gas.
 * Flow is in m3/s, positive from `from` to `to`. Every law is continuous and never falls as the flow grows; that
 * is what makes the solution unique.
 */

/** loss = r·q·|q|^(n−1) + m·q·|q|. Range: r, m ≥ 0; n 0.5 to 5. */
export interface PowerLaw {
  readonly type: 'power';
  /** r, potential per (m3/s)^n. */
  readonly r: number;
  readonly n: number;
  /** m, potential per (m3/s)²: fittings and valves. */
  readonly m?: number;
}

/**
 * Head loss of a round pipe after Darcy and Weisbach, h = (f·L/D + k)·V²/(2g), with f of `frictionFactor`.
 * Range: roughness/diameter 0 to 0.1.
 */
export interface DarcyLaw {
  readonly type: 'darcy';
  /** L, m. */
  readonly length: number;
  /** D inside, m. */
  readonly diameter: number;
  /** ε, m. */
  readonly roughness: number;
  /** ν kinematic, m2/s. */
  readonly viscosity: number;
  /** k, loss coefficient of the fittings at this diameter. */
  readonly k?: number;
  /** g, m/s2; standard gravity unless given. */
  readonly gravity?: number;
}

/**
 * The same in any potential: loss = (c·f(Re) + m)·q·|q| with Re = reynoldsPerFlow·|q|. For a gas in pressure
 * squared, c carries density, length and diameter.
 */
export interface FrictionLaw {
  readonly type: 'friction';
  /** c, potential per (m3/s)² for a friction factor of one. */
  readonly c: number;
  /** Reynolds number of a flow of 1 m3/s. */
  readonly reynoldsPerFlow: number;
  /** ε/D. */
  readonly relativeRoughness: number;
  /** m, potential per (m3/s)². */
  readonly m?: number;
}

/**
 * Straight lines through given points; flows rise, losses never fall. Beyond the last point the last line goes on.
 * A curve that starts at flow ≥ 0 is mirrored for backward flow (from the origin, which must be loss 0); one with
 * negative flows is used as it stands, its first line going on below.
 */
export interface CurveLaw {
  readonly type: 'curve';
  readonly flows: readonly number[];
  readonly losses: readonly number[];
}

/** h = a − b·q^c: a at no flow, b > 0, c > 0. */
export interface PowerPump {
  readonly shape: 'power';
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** Straight lines through points; flows rise from ≥ 0, heads never rise; the end lines go on beyond the points. */
export interface PointsPump {
  readonly shape: 'points';
  readonly flows: readonly number[];
  readonly heads: readonly number[];
}

/**
 * Adds potential: h = s²·H(q/s) at relative speed s (affinity). No backflow. At speed 0 the pump is shut. Beyond
 * its runout the curve goes on below zero, as a loss.
 */
export interface PumpLaw {
  readonly type: 'pump';
  readonly curve: PowerPump | PointsPump;
  readonly speed: number;
}

/**
 * Holds the potential at its `to` end at a value that may fall with flow, as long as the `from` end suffices;
 * else it is wide open with loss open·q². No backflow; shut when the `to` end stands above the value at no flow.
 *
 * The held value is `set − droop·q`, or straight lines through `outlet` points (potentials never rise; the first
 * is the lock-up value; the end lines go on). A droop of zero is allowed.
 */
export interface RegulatorLaw {
  readonly type: 'regulator';
  readonly outlet:
    | { readonly set: number; readonly droop?: number }
    | { readonly flows: readonly number[]; readonly potentials: readonly number[] };
  /** Wide-open loss, potential per (m3/s)². */
  readonly open: number;
}

/** Any other law: loss(q) continuous and never falling, slope(q) its derivative. Neither may keep state. */
export interface CustomLaw {
  readonly type: 'custom';
  readonly loss: (q: number) => number;
  readonly slope: (q: number) => number;
  /** A flow of the size expected, m3/s, to start from. */
  readonly expectedFlow?: number;
}

export type LinkLaw = PowerLaw | DarcyLaw | FrictionLaw | CurveLaw | PumpLaw | RegulatorLaw | CustomLaw;

export interface LinkSpec {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly law: LinkLaw;
  /** A check valve: flow only from `from` to `to`. Pumps and regulators are so by nature. */
  readonly oneWay?: boolean;
  /** Shut: no flow either way. */
  readonly closed?: boolean;
}

export interface NodeSpec {
  readonly id: string;
  /** Held potential. */
  readonly fixed?: number;
  /** Flow drawn out of the network here, m3/s; negative is fed in. Not for a fixed node. */
  readonly demand?: number;
}

export interface NetworkSpec {
  readonly nodes: readonly NodeSpec[];
  readonly links: readonly LinkSpec[];
}
