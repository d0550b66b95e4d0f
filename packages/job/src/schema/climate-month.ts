import { measure } from './field.ts';
import { record } from './record.ts';

/** The mean of a month of the year at this site, as somebody typed it or a weather file gave it. Its id is 1 to 12. */
export const climateMonth = record({
  collection: 'climateMonths',
  single: false,
  version: 1,
  fields: {
    airTemperature: measure('temperature', 'Mean air temperature.', { min: 213.15, max: 323.15 }),
    relativeHumidity: measure('ratio', 'Mean relative humidity.', { min: 0.01, max: 1 }),
    windSpeed: measure('velocity', 'Mean wind of the station, at 10 m.', { min: 0, max: 25 }),
    globalRadiation: measure('heat-flux', 'Sun on the level, mean over day and night.', { min: 0, max: 520 }),
    cloud: measure('ratio', 'Share of the sky under cloud; from the sun where left out.', { min: 0, max: 1 }),
  },
});
