/** Moist air, quantity by quantity, beside an open psychrometric library over a grid. */
import { properties, quantity } from '@firstfire/engine';
import psychrolib from 'psychrolib';
import type { Band, Suite } from '../suite.ts';

const CELSIUS = [-15, -5, -0.5, 0.5, 5, 10, 15, 20, 25, 30, 35, 45];
const HUMIDITIES = [0.1, 0.4, 0.7, 1];
const PRESSURES = [101_325, 84_560];

interface Air {
  readonly t: number;
  readonly T: number;
  readonly humidity: number;
  readonly pressure: number;
  /** W by ours, which the quantities after the first are given on both sides. */
  readonly ratio: number;
}

const GRID: readonly Air[] = CELSIUS.flatMap((t) =>
  HUMIDITIES.flatMap((humidity) =>
    PRESSURES.map((pressure) => {
      const T = t + quantity.ZERO_CELSIUS;
      const ratio = properties.humidityRatioAt(properties.vapourPressureAt(T, humidity), pressure);
      return { t, T, humidity, pressure, ratio };
    }),
  ),
);

interface Comparison {
  readonly id: string;
  readonly quantity: string;
  readonly band: Band;
  readonly because: string;
  readonly theirs: (air: Air) => number;
  readonly ours: (air: Air) => number;
}

const SAME = 'the same equations, so nothing but the last digits of a double';
const state = ({ T, ratio, pressure }: Air) => ({ temperature: T, humidityRatio: ratio, pressure });

const COMPARISONS: readonly Comparison[] = [
  {
    id: 'humidity-ratio',
    quantity: 'humidity ratio, kg/kg',
    band: { relative: 1e-9 },
    because: SAME,
    theirs: (a) => psychrolib.GetHumRatioFromRelHum(a.t, a.humidity, a.pressure),
    ours: (a) => a.ratio,
  },
  {
    id: 'dew-point',
    quantity: 'dew point, °C',
    band: { absolute: 2e-3 },
    because: 'the library stops iterating at 0.001 °C',
    theirs: (a) => psychrolib.GetTDewPointFromRelHum(a.t, a.humidity),
    ours: (a) => properties.dewPointOf(properties.vapourPressureAt(a.T, a.humidity)) - quantity.ZERO_CELSIUS,
  },
  {
    id: 'wet-bulb',
    quantity: 'wet bulb, °C',
    band: { absolute: 2e-3 },
    because: 'the library stops iterating at 0.001 °C',
    theirs: (a) => psychrolib.GetTWetBulbFromHumRatio(a.t, a.ratio, a.pressure),
    ours: (a) => properties.wetBulbOf(a.T, a.ratio, a.pressure) - quantity.ZERO_CELSIUS,
  },
  {
    id: 'wet-bulb-ratio',
    quantity: 'humidity ratio of a wet bulb 2 K under the dry bulb, kg/kg',
    band: { relative: 1e-9, absolute: 1e-7 },
    because: `${SAME}; the library raises anything under 1e-7 to 1e-7`,
    theirs: (a) => psychrolib.GetHumRatioFromTWetBulb(a.t, a.t - 2, a.pressure),
    ours: (a) => Math.max(0, properties.humidityRatioOfWetBulb(a.T, a.T - 2, a.pressure)),
  },
  {
    id: 'density',
    quantity: 'density of moist air, kg/m3',
    band: { relative: 1e-9 },
    because: SAME,
    theirs: (a) => psychrolib.GetMoistAirDensity(a.t, a.ratio, a.pressure),
    ours: (a) => properties.moistAirDensity.kernel(state(a)),
  },
  {
    id: 'dry-density',
    quantity: 'dry air in a cubic metre of moist air, kg',
    band: { relative: 1e-9 },
    because: SAME,
    theirs: (a) => 1 / psychrolib.GetMoistAirVolume(a.t, a.ratio, a.pressure),
    ours: (a) => properties.dryAirDensity.kernel(state(a)),
  },
  {
    id: 'enthalpy',
    quantity: 'enthalpy of moist air, J/kg',
    band: { absolute: 1e-6 },
    because: SAME,
    theirs: (a) => psychrolib.GetMoistAirEnthalpy(a.t, a.ratio),
    ours: (a) => properties.moistAirEnthalpyAt(a.T, a.ratio),
  },
];

function inSi(theirs: () => number): number {
  psychrolib.SetUnitSystem(psychrolib.SI);
  return theirs();
}

const ALTITUDES = [0, 250, 500, 1000, 1500, 2000, 2500, 3000, 3500];

export const MOIST_AIR_SUITES: readonly Suite[] = [
  ...COMPARISONS.map(
    (c): Suite => ({
      id: `properties/psychrolib-${c.id}`,
      area: 'properties',
      kind: 'library',
      document: 'psychrolib 1.1.1',
      at: 'grid of temperature, humidity and pressure',
      quantity: c.quantity,
      band: c.band,
      bandBecause: c.because,
      cases: GRID.map((air) => ({
        id: `${air.t} °C, ${100 * air.humidity} %, ${air.pressure} Pa`,
        published: inSi(() => c.theirs(air)),
        computed: () => c.ours(air),
      })),
    }),
  ),
  {
    id: 'properties/psychrolib-standard-pressure',
    area: 'properties',
    kind: 'library',
    document: 'psychrolib 1.1.1',
    at: 'standard pressure by altitude',
    quantity: 'pressure, Pa',
    band: { relative: 5e-4 },
    bandBecause:
      'the handbook equation takes height for geopotential height, which the 1976 standard does not',
    cases: ALTITUDES.map((altitude) => ({
      id: `${altitude} m`,
      published: inSi(() => psychrolib.GetStandardAtmPressure(altitude)),
      computed: () => properties.standardPressureAt(altitude),
    })),
  },
];
