/**
 * Outlet pressure of what is not a plain pipe, one formula each: the same laws as in the network, solved forward along
 * a path, so that the working of a pressure can be shown.
 *
 * Source: physics where not said otherwise; the droop line of a regulator is *common practice, no source*.
 * Range: gauge pressures to 1 MPa. Errors: range issues of `evaluate`; an outlet below a vacuum is `no-solution`.
 *
 * Worked examples: a meter at its badge flow of 0.60 gas at 15 °C and 101 kPa loses its badge drop; a regulator at its
 * capacity stands at its set pressure less its droop.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';
import { AIR_DENSITY } from './gas-state.ts';

const STANDARD_PRESSURE = 101_325;
const STANDARD_TEMPERATURE = 288.15;
/** Gravity of the gas that meters are rated with. */
const BADGE_GRAVITY = 0.6;
/** Share of capacity from which a regulator has left lock-up; *common practice, no source*. */
export const LOCK_UP_SHARE = 0.02;

const absolute = (symbol: string) => ({ symbol, kind: 'absolute-pressure', min: 1000, max: 3e6 }) as const;
const gauge = (symbol: string) => ({ symbol, kind: 'pressure', min: -5e4, max: 1e6 }) as const;
const drop = (symbol: string) => ({ symbol, kind: 'pressure-difference', min: 0, max: 1e6 }) as const;
const flow = (symbol: string) => ({ symbol, kind: 'standard-gas-flow', min: 0, max: 1000 }) as const;
const gravity = { symbol: 'S', kind: 'ratio', min: 0.3, max: 2.2 } as const;
const temperature = { symbol: 'T', kind: 'temperature', min: 220, max: 340 } as const;

const PHYSICS: Source = { document: 'Square law of a restriction', known: 'physics' };
const PRACTICE: Source = {
  document: 'Trade',
  at: 'droop line of a regulator',
  known: 'common practice, no source',
};

export interface MeterRating {
  /** m3/s of gas of gravity 0.60. */
  readonly badge: number;
  /** Pa. */
  readonly badgeDrop: number;
  readonly specificGravity: number;
  readonly temperature: number;
}

/** p² lost in a meter at 1 standard m3/s: k of Δp = k·ρ·V², times 2·Rs·T·ρs². */
export function meterCoefficient(x: MeterRating): number {
  const heaviness = (x.specificGravity / BADGE_GRAVITY) * (x.temperature / STANDARD_TEMPERATURE);
  return (2 * x.badgeDrop * STANDARD_PRESSURE * heaviness) / x.badge ** 2;
}

/** Absolute pressure (Pa) after a meter. */
export const meterOutlet: Formula<MeterRating & { readonly inletPressure: number; readonly flow: number }> = {
  id: 'gas.meter-outlet',
  equation: 'p1² − p2² = 2·ps·ΔPb·(q/qb)²·(S/0.60)·(T/Ts)',
  inputs: {
    inletPressure: absolute('p1'),
    flow: flow('q'),
    badge: { ...flow('qb'), min: 1e-9 },
    badgeDrop: drop('ΔPb'),
    specificGravity: gravity,
    temperature,
  },
  result: absolute('p2'),
  source: PHYSICS,
  kernel: (x) => Math.sqrt(x.inletPressure ** 2 - meterCoefficient(x) * x.flow ** 2),
};

export interface RegulatorLine {
  readonly setPressure: number;
  readonly lockUpPressure: number;
  readonly droop: number;
  readonly capacity: number;
  readonly flow: number;
}

/** Gauge pressure (Pa) that a regulator holds at its outlet. */
export const regulatorOutlet: Formula<RegulatorLine> = {
  id: 'gas.regulator-outlet',
  equation: 'p = ps − δ·q/qc (q ≥ qc/50); pl + (ps − δ/50 − pl)·50·q/qc (q < qc/50)',
  inputs: {
    setPressure: gauge('ps'),
    lockUpPressure: gauge('pl'),
    droop: drop('δ'),
    capacity: { ...flow('qc'), min: 1e-9 },
    flow: flow('q'),
  },
  result: gauge('p'),
  source: PRACTICE,
  kernel: (x) => {
    const part = x.flow / x.capacity;
    const line = x.setPressure - x.droop * Math.max(part, LOCK_UP_SHARE);
    return part >= LOCK_UP_SHARE
      ? line
      : x.lockUpPressure + ((line - x.lockUpPressure) * part) / LOCK_UP_SHARE;
  },
};

export interface WideOpenRegulator {
  readonly inletPressure: number;
  readonly flow: number;
  readonly capacity: number;
  readonly wideOpenDrop: number;
  /** Absolute pressure at the outlet that the drop is rated at, Pa. */
  readonly ratedOutlet: number;
}

/** p² lost in a wide-open regulator at 1 standard m3/s. */
export function wideOpenCoefficient(
  x: Pick<WideOpenRegulator, 'capacity' | 'wideOpenDrop' | 'ratedOutlet'>,
): number {
  return (x.wideOpenDrop * (2 * x.ratedOutlet + x.wideOpenDrop)) / x.capacity ** 2;
}

/** Absolute pressure (Pa) after a regulator that stands wide open because it gets too little. */
export const wideOpenOutlet: Formula<WideOpenRegulator> = {
  id: 'gas.wide-open-outlet',
  equation: 'p1² − p2² = ((pr + ΔPr)² − pr²)·(q/qc)²',
  inputs: {
    inletPressure: absolute('p1'),
    flow: flow('q'),
    capacity: { ...flow('qc'), min: 1e-9 },
    wideOpenDrop: drop('ΔPr'),
    ratedOutlet: absolute('pr'),
  },
  result: absolute('p2'),
  source: PHYSICS,
  kernel: (x) => Math.sqrt(x.inletPressure ** 2 - wideOpenCoefficient(x) * x.flow ** 2),
};

export interface GaugeReading {
  /** Absolute, Pa. */
  readonly pressure: number;
  /** Barometer at the supply, Pa. */
  readonly atmosphere: number;
  /** Of the gauge above the supply, m. */
  readonly height: number;
  /** Of the air, K. */
  readonly temperature: number;
}

/** Specific gas constant of air, J/(kg K). */
const AIR_GAS_CONSTANT = STANDARD_PRESSURE / (AIR_DENSITY * STANDARD_TEMPERATURE);

/** Pressure of the air outside (Pa) at a height above where the barometer stands. */
export function outsidePressure(atmosphere: number, airTemperature: number, height: number): number {
  return atmosphere * Math.exp((-STANDARD_GRAVITY * height) / (AIR_GAS_CONSTANT * airTemperature));
}

/** What a gauge shows (Pa) of an absolute pressure at a height. */
export const gaugeReading: Formula<GaugeReading> = {
  id: 'gas.gauge-reading',
  equation: 'pg = p − pa·e^(−g·z/(Ra·T))',
  inputs: {
    pressure: absolute('p'),
    atmosphere: { ...absolute('pa'), min: 50_000, max: 115_000 },
    height: { symbol: 'z', kind: 'length', min: -1000, max: 1000 },
    temperature,
  },
  result: gauge('pg'),
  source: { document: 'Barometric formula', known: 'physics' },
  kernel: (x) => x.pressure - outsidePressure(x.atmosphere, x.temperature, x.height),
};
