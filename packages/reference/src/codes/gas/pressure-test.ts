/** The pressure test that is planned or was made, against the code: pressure, duration, gauge. */
import { defineRule, type Edition } from '../../evaluate/index.ts';

interface PressureTest {
  /** Times the greatest working pressure. */
  readonly factor: number;
  /** Pa, gauge. */
  readonly least: number;
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
];

/** Divided by the pressure asked for. */
export const testPressure = defineRule({
  id: 'gas.test-pressure',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.test-pressure', working: 'job.working-pressure-greatest' },
  words: {},
  guard: 0,
  editions: testPressureEditions,
  check: (n, _w, values) => {
    const required = Math.max(values.factor * n.working, values.least);
    return { sense: 'at-least', required, found: n.found, kind: 'pressure', yardstick: required };
  },
});

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
  ],
  check: (n, _w, values) => {
    // No test at all is told by the pressure itself.
    if (n.test === 0) return { sense: 'does-not-apply' };
    const required = values.times * n.test;
    return { sense: 'at-most', required, found: n.found, kind: 'pressure', yardstick: required };
  },
});

/** Divided by the time asked for. */
export const testDuration = defineRule({
  id: 'gas.test-duration',
  line: 'gas',
  scope: 'job',
  numbers: { found: 'job.test-duration' },
  words: { dwelling: 'job.single-family' },
  guard: 0,
  editions: [
    {
      edition: 'IFGC 2018',
      from: '2017-08-31',
      source: { document: 'International Fuel Gas Code 2018', at: 'Section 406.4.2', known: 'from memory' },
      values: { seconds: 600 },
    },
    {
      edition: 'IFGC 2021',
      from: '2020-09-01',
      source: {
        document: 'International Residential Code 2021',
        at: 'G2417.4.2 (IFGC 406.4.2), as summed up on an inspection page',
        known: 'read in a public copy',
      },
      values: { seconds: 600 },
    },
  ],
  check: (n, w, values) =>
    w.dwelling === 'yes'
      ? {
          sense: 'at-least',
          required: values.seconds,
          found: n.found,
          kind: 'time',
          yardstick: values.seconds,
        }
      : { sense: 'does-not-apply' },
});
