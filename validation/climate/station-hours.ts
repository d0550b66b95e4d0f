/** Hours of a published typical year: humidity from temperature and dew point, and the sun above the atmosphere. */
import { heat, properties, quantity } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';
import { GREENSBORO, STATION_DAYS, type StationDay } from './greensboro-hours.ts';

const DEGREE = Math.PI / 180;
const HOUR = 3600;
const DOCUMENT = 'NREL TMY3 typical year, Greensboro, North Carolina';
const AT = 'hours of 1 to 3 January and 3 to 5 July, read in a public copy';

const MERIDIAN = { longitude: GREENSBORO.longitude * DEGREE, timeZone: GREENSBORO.timeZone * HOUR };

function aboveAtmosphere(day: number, hour: number): number {
  const shift = heat.solarTimeShift(day + 0.5, MERIDIAN);
  const from = heat.hourAngle((hour - 1) * HOUR + shift);
  const to = heat.hourAngle(hour * HOUR + shift);
  return heat.extraterrestrialBetween({ latitude: GREENSBORO.latitude * DEGREE, day, from, to }) / HOUR;
}

const sunCases = ({ name, day, firstLight, above }: StationDay): Case[] =>
  above.map((published, i) => ({
    id: `${name} ${firstLight + i} h`,
    published,
    computed: () => aboveAtmosphere(day, firstLight + i),
  }));

const sun: Suite = {
  id: 'climate/station-sun',
  area: 'climate',
  kind: 'published',
  document: DOCUMENT,
  at: AT,
  quantity: 'horizontal radiation above the atmosphere, mean of the hour, W/m2',
  band: { absolute: 4 },
  bandBecause:
    'the series for the sun claims 35 s in time and 0.035° in declination, which is 2.7 and 0.9 W/m2 while the sun rises or sinks, and the file prints whole numbers',
  cases: STATION_DAYS.flatMap(sunCases),
  misfits: [
    {
      cases: ['1 January 17 h', '2 January 17 h', '3 January 17 h'],
      because:
        'the low sun of the last whole hour before winter sunset stands lifted by refraction in the file, and not in ours',
    },
  ],
};

/** Hours whose dew point is above freezing or not. */
function humidityCases(frost: boolean, logPressure: (celsius: number) => number): Case[] {
  return STATION_DAYS.flatMap(({ name, air }) =>
    air.flatMap(([dryBulb, dewPoint, published], i) =>
      dewPoint < 0 === frost
        ? [
            {
              id: `${name} ${i + 1} h`,
              published,
              computed: () => 100 * Math.exp(logPressure(dewPoint) - logPressure(dryBulb)),
            },
          ]
        : [],
    ),
  );
}

const kelvin = (celsius: number): number => celsius + quantity.ZERO_CELSIUS;

const HUMIDITY = {
  area: 'climate',
  kind: 'published',
  document: DOCUMENT,
  at: AT,
  band: { absolute: 1.2 },
  bandBecause:
    'whole per cents, and both temperatures rounded to 0.1 °C, each worth 0.35 % of humidity when the air is damp',
} as const;

export const STATION_SUITES: readonly Suite[] = [
  sun,
  {
    ...HUMIDITY,
    id: 'climate/station-humidity',
    quantity: 'relative humidity from dry bulb and dew point, %',
    cases: humidityCases(false, (t) => Math.log(properties.saturationPressureAt(kelvin(t)))),
  },
  {
    ...HUMIDITY,
    id: 'climate/station-humidity-in-frost',
    quantity: 'relative humidity in frost, over liquid water as weather stations give it, %',
    cases: humidityCases(true, (t) => properties.logSaturationOverLiquid(kelvin(t))),
  },
];
