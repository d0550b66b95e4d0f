/** Monthly means of nine typical years against the hourly years made from them. */
import { heat } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';
import { type ClimatePlace, MONTH_NAMES, READ_PLACES, yearOf } from './years.ts';

const DOCUMENT = 'NREL TMY3 typical years, nine US cities';
const AT = 'monthly means of the hourly files (NREL/TP-581-43156), as computed from public copies';
const CELSIUS = 273.15;

type Monthly = (place: ClimatePlace) => readonly number[] | undefined;

function cases(published: Monthly, computed: Monthly): Case[] {
  return READ_PLACES.flatMap((place) =>
    (published(place) ?? []).map((value, m) => ({
      id: `${place.id}-${MONTH_NAMES[m]}`,
      published: value,
      computed: () => computed(place)?.[m] ?? Number.NaN,
    })),
  );
}

const means = (place: ClimatePlace, name: 'airTemperature' | 'dewPoint' | 'windSpeed' | 'globalRadiation') =>
  heat.monthlyMeansOf(yearOf(place)[name]);

/** What goes in must come out: shown, and not counted as truth from outside. */
const returned: readonly Suite[] = (
  [
    [
      'air-temperature',
      '°C',
      (p) => p.airTemperature,
      (p) => means(p, 'airTemperature').map((t) => t - CELSIUS),
    ],
    ['dew-point', '°C', (p) => p.dewPoint, (p) => means(p, 'dewPoint').map((t) => t - CELSIUS)],
    ['wind', 'm/s at 10 m', (p) => p.windSpeed, (p) => means(p, 'windSpeed')],
    [
      'sunshine',
      'kWh/m2 a day',
      (p) => p.globalRadiation,
      (p) => means(p, 'globalRadiation').map((g) => (g * 24) / 1000),
    ],
  ] satisfies [string, string, Monthly, Monthly][]
).map(([name, unit, published, computed]) => ({
  id: `climate/typical-year-${name}-returned`,
  area: 'climate',
  kind: 'estimate',
  document: DOCUMENT,
  at: AT,
  quantity: `monthly mean of the synthetic hourly year made from it, ${unit}`,
  band: { absolute: 1e-6 },
  bandBecause:
    'the method keeps monthly means to round-off; these are its inputs, so the cases are not counted',
  cases: cases(published, computed),
}));

const relativeHumidity: Suite = {
  id: 'climate/typical-year-relative-humidity',
  area: 'climate',
  kind: 'estimate',
  document: DOCUMENT,
  at: AT,
  quantity: 'monthly mean relative humidity of the hourly year made from the dew points, %',
  band: { absolute: 8 },
  bandBecause:
    'the mean of a ratio does not follow from the means of its parts, and the files give it over liquid water where ours is over ice in frost',
  cases: cases(
    (place) => place.relativeHumidity,
    (place) => heat.monthlyMeansOf(yearOf(place).relativeHumidity).map((x) => x * 100),
  ),
};

const cloud: Suite = {
  id: 'climate/typical-year-cloud-from-sunshine',
  area: 'climate',
  kind: 'estimate',
  document: DOCUMENT,
  at: AT,
  quantity: 'monthly mean sky cover estimated from sunshine alone, tenths',
  band: { absolute: 3 },
  bandBecause:
    'an estimate for lack of an observation, by one pair of constants for every climate; the mean deviation is one tenth',
  cases: cases(
    (place) => place.cloud,
    (place) => {
      const { cloud: _, ...rest } = catalog.climate.normalsOf(place);
      return rest.globalRadiation.map((__, m) => 10 * heat.cloudOfClearness(heat.clearnessOfMonth(rest, m)));
    },
  ),
  misfits: [
    {
      cases: ['phoenix-jul'],
      because:
        'the high, broken cloud of the rainy season lets through sunshine that a mean sky of that cover would not',
    },
  ],
};

/** The header's layers at 2 and 4 m from its layer of 0.5 m: its own swing and phase, brought down by our equation. */
const ground: Suite = {
  id: 'climate/typical-year-ground',
  area: 'climate',
  kind: 'estimate',
  document: DOCUMENT,
  at: 'ground temperatures of the EPW headers at 0.5, 2 and 4 m, and of one European file',
  quantity: 'monthly mean of the ground layer, °C, by the wave found in the layer of 0.5 m',
  band: { absolute: 1 },
  bandBecause:
    'the headers step twice as far from April to May as from March to April, which no wave does; the mean deviation is 0.15 K',
  cases: [
    ...READ_PLACES.flatMap((place) => layerCases(place.id, place.ground ?? [])),
    ...layerCases('amsterdam', [
      [6.55, 4.47, 3.9, 4.39, 7.2, 10.34, 13.3, 15.44, 16.06, 15.06, 12.63, 9.58],
      [8.41, 6.47, 5.54, 5.51, 6.99, 9.14, 11.45, 13.43, 14.46, 14.26, 12.9, 10.8],
      [9.63, 8.12, 7.19, 6.91, 7.45, 8.71, 10.26, 11.79, 12.81, 13.06, 12.47, 11.24],
    ]),
  ],
};

function layerCases(id: string, layers: readonly (readonly number[])[]): Case[] {
  const top = heat.yearWave(layers[0] ?? []);
  const unit = { mean: 0, amplitude: 1, coldest: 0 };
  const shape = layerWave(unit, 0.5);
  const surface = {
    mean: top.mean,
    amplitude: top.amplitude / shape.amplitude,
    coldest: top.coldest - shape.coldest,
  };
  return layers.slice(1).flatMap((months, i) => {
    const depth = catalog.climate.GROUND_DEPTHS[i + 1] ?? 0;
    return months.map((published, m) => ({
      id: `${id}-${depth}m-${MONTH_NAMES[m]}`,
      published,
      computed: () => layerMonths(surface, depth)[m] ?? Number.NaN,
    }));
  });
}

function layerMonths(surface: heat.YearWave, depth: number): number[] {
  const starts = heat.monthStarts(false);
  return heat.monthLengths(false).map((days, m) => {
    let sum = 0;
    for (let d = 0; d < days; d++) {
      const day = (starts[m] ?? 0) + d + 0.5;
      sum += heat.groundLayerTemperature({ surface, depth, day, diffusivity: heat.SOIL_DIFFUSIVITY });
    }
    return sum / days;
  });
}

function layerWave(surface: heat.YearWave, depth: number): heat.YearWave {
  return heat.yearWave(layerMonths(surface, depth));
}

export const TYPICAL_YEAR_SUITES: readonly Suite[] = [...returned, relativeHumidity, cloud, ground];
