/** Climate normals 1981-2010 of NOAA against what the hourly year and the places on board say. */
import { heat } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Suite } from '../suite.ts';
import { MONTH_NAMES, placeOf, yearOf, yearOfNormals } from './years.ts';

const DOCUMENT = 'NOAA NCEI U.S. Climate Normals 1981-2010';
const CHICAGO_AT = 'Chicago O’Hare, Illinois State Climatologist';

const HIGH = [31, 35.3, 46.6, 59, 70, 79.7, 84.1, 81.9, 74.8, 62.3, 48.2, 34.8];
const MEAN = [23.8, 27.7, 37.9, 48.9, 59.1, 68.9, 74, 72.4, 64.6, 52.5, 40.3, 27.7];
const LOW = [16.5, 20.1, 29.2, 38.8, 48.3, 58.1, 63.9, 62.9, 54.3, 42.8, 32.4, 20.7];
const HEATING_DEGREE_DAYS = [1279, 1044, 841, 492, 225, 48, 4, 8, 105, 397, 741, 1155];
const COOLING_DEGREE_DAYS = 842;

const kelvin = (fahrenheit: number): number => (fahrenheit + 459.67) / 1.8;
const fahrenheit = (kelvins: number): number => kelvins * 1.8 - 459.67;

/** Chicago's hourly year with the mean temperatures of the normals; its humidity relative, to fit them. */
function chicago(): heat.HourlyWeather {
  const { dewPoint: _, ...rest } = catalog.climate.normalsOf(placeOf('chicago'));
  return yearOfNormals('chicago-normals', { ...rest, airTemperature: MEAN.map(kelvin) });
}

/** Sum over the days of a month of how far the day's mean lies on one side of 65 °F. */
function degreeDays(month: number, side: 1 | -1): number {
  const starts = heat.monthStarts(false);
  const year = chicago();
  let sum = 0;
  for (let d = starts[month] ?? 0; d < (starts[month + 1] ?? 0); d++) {
    const day = year.airTemperature.subarray(d * 24, (d + 1) * 24);
    sum += Math.max(0, side * (65 - fahrenheit(day.reduce((a, b) => a + b, 0) / 24)));
  }
  return sum;
}

const months = MONTH_NAMES.map((_, m) => m);

const degreeDaySuite: Suite = {
  id: 'climate/noaa-degree-days',
  area: 'climate',
  kind: 'estimate',
  document: DOCUMENT,
  at: CHICAGO_AT,
  quantity: 'degree days to 65 °F of the hourly year made from the twelve mean temperatures, °F·d',
  band: { relative: 0.03, absolute: 14 },
  bandBecause:
    'the days of a month are spread by one correlation for every climate; a month of thirty equal days would miss May by 42 and September by 80',
  cases: [
    ...HEATING_DEGREE_DAYS.map((published, m) => ({
      id: `heating-${MONTH_NAMES[m]}`,
      published,
      computed: () => degreeDays(m, 1),
    })),
    {
      id: 'heating-year',
      published: 6339,
      computed: () => months.reduce((sum, m) => sum + degreeDays(m, 1), 0),
    },
    {
      id: 'cooling-year',
      published: COOLING_DEGREE_DAYS,
      computed: () => months.reduce((sum, m) => sum + degreeDays(m, -1), 0),
    },
  ],
};

const swing: Suite = {
  id: 'climate/noaa-daily-swing',
  area: 'climate',
  kind: 'estimate',
  document: DOCUMENT,
  at: CHICAGO_AT,
  quantity: 'swing of the mean day by the clearness of the month, against mean daily high minus low, K',
  band: { absolute: 4.6 },
  bandBecause:
    'not the same quantity: the mean day swings less than the mean of the days does, here by 1.5 to 4.5 K; shown, not counted',
  cases: HIGH.map((high, m) => ({
    id: `chicago-${MONTH_NAMES[m]}`,
    published: (high - (LOW[m] ?? 0)) / 1.8,
    computed: () =>
      heat.diurnalSwing(heat.clearnessOfMonth(catalog.climate.normalsOf(placeOf('chicago')), m)),
  })),
};

const ANNUAL: readonly (readonly [string, number])[] = [
  ['denver', 50.5],
  ['dallas', 66.3],
  ['miami', 77.2],
  ['atlanta', 62.6],
  ['boston', 51.5],
  ['phoenix', 75.1],
  ['san-francisco', 58.2],
  ['new-york', 55],
  ['chicago', 49.9],
];

const annual: Suite = {
  id: 'climate/noaa-annual-means',
  area: 'climate',
  kind: 'estimate',
  document: DOCUMENT,
  at: 'annual mean temperatures, nine stations',
  quantity: 'mean temperature of the hourly year of the place on board, °F',
  band: { absolute: 2 },
  bandBecause:
    'a typical year is put together from months of 1991 to 2005 and need not have the mean of 1981 to 2010',
  cases: ANNUAL.map(([id, published]) => ({
    id,
    published,
    computed: () => {
      const air = yearOf(placeOf(id)).airTemperature;
      return fahrenheit(air.reduce((a, b) => a + b, 0) / air.length);
    },
  })),
};

export const NOAA_SUITES: readonly Suite[] = [degreeDaySuite, swing, annual];
