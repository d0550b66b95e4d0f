/** Solar geometry against published positions and radiation above the atmosphere. */
import { heat } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';
import { MONTH_NAMES } from './years.ts';

const DEGREE = Math.PI / 180;
const HOUR = 3600;

/** Wh/m2, hours ending 9 to 17, first three days of the year. */
const AMSTERDAM = [
  [0, 88, 224, 315, 354, 339, 272, 156, 21],
  [0, 89, 225, 316, 356, 342, 274, 159, 23],
  [0, 89, 226, 317, 358, 344, 277, 161, 24],
];

function aboveAmsterdam(day: number, hour: number): number {
  const shift = heat.solarTimeShift(day + 0.5, { longitude: 4.77 * DEGREE, timeZone: HOUR });
  const from = heat.hourAngle((hour - 1) * HOUR + shift);
  const to = heat.hourAngle(hour * HOUR + shift);
  return heat.extraterrestrialBetween({ latitude: 52.3 * DEGREE, day, from, to }) / HOUR;
}

const amsterdam: Suite = {
  id: 'climate/weather-file-extraterrestrial',
  area: 'climate',
  kind: 'published',
  document: 'ASHRAE IWEC typical year, Amsterdam',
  at: 'extraterrestrial horizontal radiation, hours 9 to 17 of 1 to 3 January, read in a public copy',
  quantity: 'radiation above the atmosphere in the hour, Wh/m2',
  band: { absolute: 2 },
  bandBecause: 'whole numbers, cut off rather than rounded, in the hours when the sun rises and sets fastest',
  cases: AMSTERDAM.flatMap((row, day) =>
    row.map(
      (published, i): Case => ({
        id: `${day + 1}-jan-hour-${i + 9}`,
        published,
        computed: () => aboveAmsterdam(day, i + 9),
      }),
    ),
  ),
};

function sun(): { zenith: number; azimuth: number } {
  const day = 289 + 18.508 / 24;
  const meridian = { longitude: -105.1786 * DEGREE, timeZone: -7 * HOUR };
  const omega = heat.hourAngle(12.5 * HOUR + 30 + heat.solarTimeShift(day, meridian));
  const declination = heat.solarDeclination(day);
  const latitude = 39.742476 * DEGREE;
  return {
    zenith: Math.acos(heat.cosineOfZenith(latitude, declination, omega)) / DEGREE,
    azimuth: heat.solarAzimuth(latitude, declination, omega) / DEGREE,
  };
}

const position: Suite = {
  id: 'climate/solar-position-report',
  area: 'climate',
  kind: 'practice',
  document: 'NREL/TP-560-34302, Solar Position Algorithm (Reda and Andreas)',
  at: 'Table A5.1, 17 October 2003, Golden, Colorado, from memory',
  quantity: 'angle, degrees',
  band: { absolute: 0.2 },
  bandBecause: 'the series used here claim 0.035° in declination and 35 s in time; refraction is left out',
  cases: [
    { id: 'zenith', published: 50.11162, computed: () => sun().zenith },
    { id: 'azimuth', published: 194.34024, computed: () => sun().azimuth },
  ],
};

const FAO: readonly (readonly [number, readonly number[]])[] = [
  [0, [36.2, 37.5, 37.9, 36.8, 34.8, 33.4, 33.9, 35.7, 37.2, 37.4, 36.3, 35.6]],
  [40, [15, 20.4, 27.2, 34.7, 39.7, 41.9, 40.8, 36.7, 30, 22.5, 16.3, 13.6]],
];

const fao: Suite = {
  id: 'climate/fao-extraterrestrial',
  area: 'climate',
  kind: 'practice',
  document: 'FAO Irrigation and Drainage Paper 56',
  at: 'Annex 2, Table 2.6, northern latitudes, from memory',
  quantity: 'radiation above the atmosphere on the 15th, MJ/m2',
  band: { relative: 0.04 },
  bandBecause:
    'the paper takes the declination for a single sine, up to 1° from the sun’s in spring and autumn',
  cases: FAO.flatMap(([latitude, row]) =>
    row.map((published, m) => ({
      id: `${latitude}-north-${MONTH_NAMES[m]}`,
      published,
      computed: () =>
        heat.extraterrestrialOfDay(latitude * DEGREE, (heat.monthStarts(false)[m] ?? 0) + 14) / 1e6,
    })),
  ),
};

export const SOLAR_SUITES: readonly Suite[] = [amsterdam, position, fao];
