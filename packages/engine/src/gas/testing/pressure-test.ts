/**
 * The pressure test of new piping: how high, how long, and how far the gauge moves by temperature alone.
 *
 *     test    p ≥ max(factor·working, least)
 *     time    t ≥ half an hour for each 500 ft3 of pipe or part of it
 *     gauge   (p2 + pa2)/T2 = (p1 + pa1)/T1
 *
 * Pressures in the last line are absolute: a gauge at 20 psi that cools from 70 to 40 °F falls by 2 psi, not by the
 * 1.1 that gauge pressures would give. The barometer may move too, and is given for both readings.
 *
 * Source: IFGC 2015 406.4.1; IFGC 2018 A.7.5 (both read in public copies); duration 406.4.2 from memory.
 * Range: gauge 0 to 1 MPa, −45 to 60 °C, barometer 60 to 110 kPa, pipe to 1000 m3.
 * Errors: range issues of `evaluate`. A test gauge below a vacuum cannot come out: T ratios stay within 1.5.
 *
 * Worked example (A.7.5): 20 psi at 70 °F, 14.7 psia, cooled to 40 °F → 18.0 psi.
 */
import { CUBIC_FOOT, MINUTE } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

const gauge = (symbol: string) => ({ symbol, kind: 'pressure', min: 0, max: 1e6 }) as const;
const barometer = (symbol: string) =>
  ({ symbol, kind: 'absolute-pressure', min: 60_000, max: 110_000 }) as const;
const temperature = (symbol: string) => ({ symbol, kind: 'temperature', min: 228, max: 334 }) as const;

export interface TestRequirement {
  /** Greatest working pressure, gauge, Pa. */
  readonly workingPressure: number;
  readonly factor: number;
  /** Gauge, Pa. */
  readonly least: number;
}

export const TEST_PRESSURE_SOURCE: Source = {
  document: 'International Fuel Gas Code 2015',
  at: 'Section 406.4.1',
  known: 'read in a public copy',
};

/** Least test pressure (gauge, Pa). */
export const testPressure: Formula<TestRequirement> = {
  id: 'gas.test-pressure',
  equation: 'p = max(k·pw, p0)',
  inputs: {
    workingPressure: gauge('pw'),
    factor: { symbol: 'k', kind: 'ratio', min: 1, max: 5 },
    least: gauge('p0'),
  },
  result: gauge('p'),
  source: TEST_PRESSURE_SOURCE,
  kernel: (x) => Math.max(x.factor * x.workingPressure, x.least),
};

export interface TestedPipe {
  /** Volume of the pipe under test, m3. */
  readonly volume: number;
}

const SHORT_TEST = 10 * MINUTE;
const HALF_HOUR = 30 * MINUTE;
const VOLUME_STEP = 500 * CUBIC_FOOT;
const SMALL_SYSTEM = 10 * CUBIC_FOOT;
const LONGEST_TEST = 24 * 60 * MINUTE;

/** Least test time (s) where the building is not a single-family dwelling, for which ten minutes do. */
export const testDuration: Formula<TestedPipe> = {
  id: 'gas.test-duration',
  equation: 't = 0.5 h·⌈V/500 ft3⌉ (V ≥ 10 ft3); 10 min (V < 10 ft3); t ≤ 24 h',
  inputs: { volume: { symbol: 'V', kind: 'volume', min: 0, max: 1000 } },
  result: { symbol: 't', kind: 'time' },
  source: { document: 'International Fuel Gas Code 2018', at: 'Section 406.4.2', known: 'from memory' },
  kernel: (x) => {
    if (x.volume < SMALL_SYSTEM) return SHORT_TEST;
    return Math.min(HALF_HOUR * Math.ceil(x.volume / VOLUME_STEP), LONGEST_TEST);
  },
};

export interface TestReadings {
  /** First reading, gauge, Pa. */
  readonly pressure: number;
  /** K, at the first and the second reading. */
  readonly temperature: number;
  readonly laterTemperature: number;
  /** Pa, at the first and the second reading. */
  readonly atmosphere: number;
  readonly laterAtmosphere: number;
}

/** What the gauge (Pa) shows later if nothing leaks. */
export const testGaugeLater: Formula<TestReadings> = {
  id: 'gas.test-gauge-later',
  equation: 'p2 = (p1 + pa1)·T2/T1 − pa2',
  inputs: {
    pressure: gauge('p1'),
    temperature: temperature('T1'),
    laterTemperature: temperature('T2'),
    atmosphere: barometer('pa1'),
    laterAtmosphere: barometer('pa2'),
  },
  result: { symbol: 'p2', kind: 'pressure' },
  source: {
    document: 'International Fuel Gas Code 2018',
    at: 'Appendix A.7.5 (ideal-gas law)',
    known: 'read in a public copy',
  },
  kernel: (x) => (x.pressure + x.atmosphere) * (x.laterTemperature / x.temperature) - x.laterAtmosphere,
};
