/**
 * Clocking a gas meter: what burns, from the turns of a test dial against a stopwatch.
 *
 *     Qm = dial · turns / t        Qs = Qm · (p/ps) · (Ts/T)        heat = Qs · H
 *
 * with p and T of the gas in the meter, absolute, and ps, Ts those of the standard volume (15 °C, 101.325 kPa) that
 * the heating value belongs to. At high altitude a metered cubic foot holds far less gas than a standard one; the
 * barometer is part of p.
 *
 * A compensated index has done part of this already: one compensated for temperature shows the volume at 60 °F and
 * the line pressure, one compensated for both shows standard cubic feet of 60 °F and 14.73 psia.
 *
 * How sources disagree: most service pages leave p and T out (metered feet times 1000 Btu), which is 1.5 % low at
 * 7 in w.c. and sea level and 15 % high at 5000 ft. Compressibility is left out here (under 0.3 % to 10 psi).
 *
 * Source: ideal-gas law; worked examples of a gas technician training text, Unit 11 (read in a public copy).
 * Range: dial 1e-4 to 10 m3, 0.25 to 1000 turns, 1 to 36,000 s; gas 60 kPa to 1.2 MPa absolute, −45 to 60 °C.
 * Errors: range issues. Whole turns are the user's business: a dial read in part carries its hand's error.
 *
 * Worked example: 5 ft3 dial, one turn in 20 s, 10 psi gauge under 14.55 psia, 45 °F → 900 metered ft3/h,
 * 1544.5 standard ft3/h (60 °F, 14.73 psia).
 */
import { PSI } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

export const CLOCK_SOURCE: Source = {
  document: 'Ideal-gas law',
  at: 'volume at 15 °C and 101.325 kPa',
  known: 'physics',
};

const STANDARD_PRESSURE = 101_325;
const STANDARD_TEMPERATURE = 288.15;
/** 60 °F, the temperature that a compensated index shows its volume at, K. */
const INDEX_TEMPERATURE = (60 + 459.67) / 1.8;
/** 14.73 psia, the pressure that a fully compensated index shows its volume at, Pa. */
const INDEX_PRESSURE = 14.73 * PSI;

/** What the index of the meter has already corrected for. */
export type Compensation = 'none' | 'temperature' | 'temperature-and-pressure';

export interface DialReading {
  /** Volume of one turn, m3. */
  readonly dial: number;
  readonly revolutions: number;
  /** s. */
  readonly seconds: number;
}

const seconds = { symbol: 't', kind: 'time', min: 1, max: 36_000 } as const;
const metered = { symbol: 'Qm', kind: 'metered-gas-flow', min: 0, max: 100 } as const;

/** Flow as the meter turns, metered m3/s. */
export const meteredFlow: Formula<DialReading> = {
  id: 'gas.metered-flow',
  equation: 'Qm = V·n/t',
  inputs: {
    dial: { symbol: 'V', kind: 'metered-gas-volume', min: 1e-4, max: 10 },
    revolutions: { symbol: 'n', kind: 'ratio', min: 0.25, max: 1000 },
    seconds,
  },
  result: metered,
  source: CLOCK_SOURCE,
  kernel: (x) => (x.dial * x.revolutions) / x.seconds,
};

export interface MeteredGas {
  /** Qm, metered m3/s. */
  readonly flow: number;
  /** p of the volume the index shows, absolute, Pa. */
  readonly pressure: number;
  /** T of the volume the index shows, K. */
  readonly temperature: number;
}

/** Standard flow (m3/s at 15 °C, 101.325 kPa) of a metered one. */
export const standardFlow: Formula<MeteredGas> = {
  id: 'gas.standard-flow',
  equation: 'Qs = Qm·(p/101.325 kPa)·(288.15 K/T)',
  inputs: {
    flow: metered,
    pressure: { symbol: 'p', kind: 'absolute-pressure', min: 60_000, max: 1.2e6 },
    temperature: { symbol: 'T', kind: 'temperature', min: 228, max: 334 },
  },
  result: { symbol: 'Qs', kind: 'standard-gas-flow' },
  source: CLOCK_SOURCE,
  kernel: (x) => x.flow * (x.pressure / STANDARD_PRESSURE) * (STANDARD_TEMPERATURE / x.temperature),
};

export interface MeterState {
  /** Gauge pressure in the meter, Pa. */
  readonly gaugePressure: number;
  /** Barometer at the meter, Pa. */
  readonly atmosphere: number;
  /** K. */
  readonly temperature: number;
  readonly compensation: Compensation;
}

/** Pressure and temperature of the volume that the index shows. */
export function indexState(meter: MeterState): { readonly pressure: number; readonly temperature: number } {
  const line = meter.atmosphere + meter.gaugePressure;
  if (meter.compensation === 'none') return { pressure: line, temperature: meter.temperature };
  const pressure = meter.compensation === 'temperature' ? line : INDEX_PRESSURE;
  return { pressure, temperature: INDEX_TEMPERATURE };
}
