/** Climate normals of a cold place outside the typical-year files. Recalled, not read: check before anyone relies on them. */
import type { Source } from '@firstfire/engine';
import type { ClimatePlace } from './place.ts';

const RECALLED: Source = {
  document: 'Canadian Climate Normals 1981-2010; NRCan solar resource data',
  at: 'Winnipeg, rounded',
  known: 'from memory',
};

export const NORTHERN_PLACES: readonly ClimatePlace[] = [
  {
    id: 'winnipeg',
    name: 'Winnipeg, Manitoba',
    station: '71852',
    source: RECALLED,
    latitude: 49.92,
    longitude: -97.23,
    timeZone: -6,
    elevation: 239,
    airTemperature: [-16.4, -13.2, -5.8, 4.4, 11.6, 17, 19.7, 18.8, 12.7, 5, -4.9, -13.2],
    relativeHumidity: [76, 76, 76, 62, 57, 66, 69, 68, 70, 71, 79, 79],
    windSpeed: [4.8, 4.7, 4.8, 5, 5, 4.5, 4.1, 4.2, 4.7, 4.9, 4.8, 4.7],
    globalRadiation: [1.5, 2.6, 4, 5, 5.8, 6.2, 6.2, 5.2, 3.6, 2.3, 1.4, 1.2],
    dailySwing: [10, 10.2, 10.2, 12.1, 13.4, 12.3, 12.4, 12.9, 12.1, 10.5, 8.8, 9.4],
  },
];
