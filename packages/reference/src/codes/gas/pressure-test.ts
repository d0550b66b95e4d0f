/** The pressure test that is planned or was made, against the code: pressure, duration, gauge. */
import { defineRule, type Edition } from '../../evaluate/index.ts';
import { b149, ifgc2018 } from '../entries.ts';

interface PressureTest {
  /** Times the greatest working pressure. */
  readonly factor: number;
  /** Pa, gauge. */
  readonly least: number;
  /** The same for a run of more than 200 ft, where the code makes a difference. */
  readonly leastLong?: number;
}

const testPressureEditions: readonly Edition<PressureTest>[] = [
  {
    edition: 'IFGC 2015',
    from: '2014-05-30',
    source: {
      document: 'International Fuel Gas Code 2015',
      at: 'Section 406.4.1, as quoted on a builders’ forum',
      known: 'read in a public copy',
    },
    values: { factor: 1.5, least: 20_684.27 },
  },
  b149(
    '6.22 and table 6.3; over 60 m and the factor as restated in a training text, 15 psi (100 kPa) for less recalled',
    { factor: 1.5, least: 100_000, leastLong: 340_000 },
  ),
];

/** Divided by the pressure asked for. */
export const testPressure = defineRule({
  id: 'gas.test-pressure',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.test-pressure', working: 'job.working-pressure-greatest' },
  words: { run: 'job.test-run' },
  optional: ['run'],
  guard: 0,
  editions: testPressureEditions,
  check: (n, w, values) => {
    if (values.leastLong !== undefined && w.run === '') return { sense: 'unread' };
    const least = w.run === 'long' ? (values.leastLong ?? values.least) : values.least;
    const required = Math.max(values.factor * n.working, least);
    return { sense: 'at-least', required, found: n.found, kind: 'pressure', yardstick: required };
  },
});

/** Of the full scale, in test pressures. */
interface GaugeRange {
  readonly times: number;
  /** Below which the needle may run off its end. */
  readonly timesLeast?: number;
}

/** A gauge that reaches far beyond the test hides a small leak. Divided by the range allowed. */
export const testGaugeRange = defineRule({
  id: 'gas.test-gauge-range',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.test-gauge-range', test: 'job.test-pressure' },
  words: {},
  guard: 0,
  editions: [
    {
      edition: 'IFGC 2018',
      from: '2017-08-31',
      source: { document: 'International Fuel Gas Code 2018', at: 'Section 406.4', known: 'from memory' },
      values: { times: 5 },
    },
    {
      edition: 'IFGC 2021',
      from: '2020-09-01',
      source: {
        document: 'International Residential Code 2021',
        at: 'G2417.4 (IFGC 406.4), as summed up on an inspection page',
        known: 'read in a public copy',
      },
      values: { times: 5 },
    },
    b149(
      '6.22, range 15 to 300 % beyond the test, as restated in a gas technician’s training text',
      { times: 4, timesLeast: 1.15 },
      'read in a public copy',
    ),
  ] as readonly Edition<GaugeRange>[],
  check: (n, _w, values) => {
    // No test at all is told by the pressure itself.
    if (n.test === 0) return { sense: 'does-not-apply' };
    const required = values.times * n.test;
    if (values.timesLeast !== undefined)
      return {
        sense: 'within',
        low: values.timesLeast * n.test,
        high: required,
        found: n.found,
        kind: 'pressure',
      };
    return { sense: 'at-most', required, found: n.found, kind: 'pressure', yardstick: required };
  },
});

interface Duration {
  readonly seconds: number;
  /** For a run of more than 200 ft, where the code makes a difference. */
  readonly secondsLong?: number;
  /** Asked of dwellings of one or two families alone; the rest goes by volume, which is not counted here. */
  readonly dwellings?: true;
}

const durations: readonly Edition<Duration>[] = [
  ifgc2018('Section 406.4.2', { seconds: 600, dwellings: true }),
  {
    edition: 'IFGC 2021',
    from: '2020-09-01',
    source: {
      document: 'International Residential Code 2021',
      at: 'G2417.4.2 (IFGC 406.4.2), as summed up on an inspection page',
      known: 'read in a public copy',
    },
    values: { seconds: 600, dwellings: true },
  },
  b149('6.22 and table 6.3; 180 min over 60 m as restated in a training text, 15 min for less recalled', {
    seconds: 15 * 60,
    secondsLong: 180 * 60,
  }),
];

/** Divided by the time asked for. */
export const testDuration = defineRule({
  id: 'gas.test-duration',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.test-duration' },
  words: { dwelling: 'job.single-family', run: 'job.test-run' },
  optional: ['dwelling', 'run'],
  guard: 0,
  editions: durations,
  check: (n, w, values) => {
    if (values.dwellings && w.dwelling === 'no') return { sense: 'does-not-apply' };
    if (values.dwellings && w.dwelling === '') return { sense: 'unread' };
    if (values.secondsLong !== undefined && w.run === '') return { sense: 'unread' };
    const seconds = w.run === 'long' ? (values.secondsLong ?? values.seconds) : values.seconds;
    return { sense: 'at-least', required: seconds, found: n.found, kind: 'time', yardstick: seconds };
  },
});

/** Never oxygen, which makes oil in the pipe burn, and never the gas itself. */
export const testGas = defineRule({
  id: 'gas.test-gas',
  line: 'gas',
  scope: 'job',
  numbers: {},
  words: { gas: 'job.test-gas' },
  editions: [
    ifgc2018('406.2, read in the 2018 residential code', {}, 'read in a public copy'),
    b149('6.22, air or inert gas', {}),
  ],
  check: (_n, w) => ({ sense: 'holds', holds: w.gas !== 'oxygen' && w.gas !== 'fuel gas' }),
});

/** Stages at which no gas has been let in yet. */
const BEFORE_GAS: ReadonlySet<string> = new Set(['survey', 'plan', 'install']);

/** Of the whole system once gas is on. Before that there is nothing to be found, and nobody is asked. */
export const noLeak = defineRule({
  id: 'gas.no-leak',
  line: 'gas',
  scope: 'job',
  numbers: {},
  words: { leaks: 'job.leaks', stage: 'job.stage' },
  optional: ['leaks', 'stage'],
  stops: true,
  hazard: 'gas',
  editions: [ifgc2018('406.5 and 406.6', {}), b149('6.22, leak test of what is put in use', {})],
  check: (_n, w) => {
    if (w.leaks !== '') return { sense: 'holds', holds: w.leaks === 'no' };
    return BEFORE_GAS.has(w.stage) ? { sense: 'does-not-apply' } : { sense: 'unread' };
  },
});
