/** Long-wave radiation of the sky in nine typical years against our sky over the hourly years made from their means. */
import { heat } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';
import { MONTH_NAMES, READ_PLACES, yearOf } from './years.ts';

const DOCUMENT = 'NREL TMY3 typical years, nine US cities';

/** Monthly means of σ·Tsky⁴, W/m2. */
function means(skyTemperatures: Float64Array): number[] {
  return heat.monthlyMeansOf(skyTemperatures.map((T) => heat.STEFAN_BOLTZMANN * T ** 4));
}

function clarkAllen(weather: heat.HourlyWeather): Float64Array {
  return weather.dewPoint.map((dewPoint, i) =>
    heat.skyTemperatureOf(
      heat.clarkAllen.kernel({ dewPoint }),
      weather.cloud[i] ?? Number.NaN,
      weather.airTemperature[i] ?? Number.NaN,
    ),
  );
}

function cases(sky: (weather: heat.HourlyWeather) => Float64Array): Case[] {
  return READ_PLACES.flatMap((place) => {
    let made: number[] | undefined;
    const months = (): number[] => {
      made ??= means(sky(yearOf(place)));
      return made;
    };
    return (place.skyRadiation ?? []).map((published, m) => ({
      id: `${place.id}-${MONTH_NAMES[m]}`,
      published,
      computed: () => months()[m] ?? Number.NaN,
    }));
  });
}

export const SKY_SUITES: readonly Suite[] = [
  {
    id: 'climate/typical-year-sky-radiation',
    area: 'climate',
    kind: 'estimate',
    document: DOCUMENT,
    at: 'horizontal infrared radiation of the EPW files, monthly means; computed in the files, not measured',
    quantity: 'monthly mean long-wave radiation of the sky, W/m2',
    band: { absolute: 34 },
    bandBecause:
      'two models of the same sky: ours stands 1 W/m2 over the files in the mean and 11 off on average, 33 over in a humid July of Dallas; its own scatter over measured clear skies is 13',
    cases: cases(heat.skyTemperatures),
  },
  {
    id: 'climate/typical-year-sky-radiation-clark-allen',
    area: 'climate',
    kind: 'estimate',
    document: DOCUMENT,
    at: 'the same, by the equation of Clark and Allen which the files were computed with',
    quantity: 'monthly mean long-wave radiation of the sky, W/m2',
    band: { absolute: 8 },
    bandBecause:
      'the files’ own equation on hours whose means alone are known: the hourly years are good to 2 W/m2 on average; the same figures as above, not counted twice',
    cases: cases(clarkAllen),
  },
];
