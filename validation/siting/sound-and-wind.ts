/** Sound by distance and the pressure of wind. */
import { evaluate, place, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

const RATIOS: readonly (readonly [ratio: number, level: number])[] = [
  [1, 100],
  [2, 94],
  [4, 88],
  [10, 80],
  [100, 60],
];

const sound: Suite = {
  id: 'siting/sound-by-distance',
  area: 'siting',
  kind: 'published',
  document: 'calculator.academy, Distance attenuation',
  at: 'table of ratios from 100 dB; example of 95 dB at 1 m',
  quantity: 'sound pressure level, dB',
  band: { absolute: 0.05 },
  bandBecause: 'one printed decimal',
  cases: [
    ...RATIOS.map(([distance, published]) => ({
      id: `100 dB, ${distance} times as far`,
      published,
      computed: () => evaluate(place.soundAtDistance, { level: 100, referenceDistance: 1, distance }),
    })),
    {
      id: '95 dB at 1 m, at 8 m',
      published: 76.94,
      computed: () => evaluate(place.soundAtDistance, { level: 95, referenceDistance: 1, distance: 8 }),
    },
  ],
};

const PSF = quantity.POUND_FORCE / quantity.FOOT ** 2;
const MPH = quantity.MILE / quantity.HOUR;

const wind: Suite = {
  id: 'siting/wind-pressure',
  area: 'siting',
  kind: 'practice',
  document: 'ASCE/SEI 7',
  at: 'velocity pressure 0.00256·Kz·V² in psf and mph, from memory',
  quantity: 'psf',
  band: { relative: 0.002 },
  bandBecause: 'three printed digits of the factor',
  cases: [90, 115, 150, 180].map((mph) => ({
    id: `${mph} mph, Kz 0.85`,
    published: 0.00256 * 0.85 * mph ** 2,
    computed: () => {
      const found = evaluate(place.windPressure, { windSpeed: mph * MPH, exposure: 0.85 });
      return found.ok ? found.value / PSF : found;
    },
  })),
};

export const SOUND_AND_WIND_SUITES: readonly Suite[] = [sound, wind];
