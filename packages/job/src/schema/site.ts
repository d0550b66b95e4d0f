import { choose, measure, text, yesNo } from './field.ts';
import { record } from './record.ts';

/** Where the job is, and its climate. */
export const site = record({
  collection: 'site',
  single: true,
  version: 1,
  fields: {
    country: choose(['US', 'CA'], 'Decides which codes can hold.'),
    region: text('State or province, the second part of its ISO 3166-2 code.'),
    locality: text('Town.'),
    altitude: measure('length', 'Height above sea level.', { min: -450, max: 5000 }),
    singleFamily: yesNo('A one- or two-family dwelling, as the codes mean it.'),
    climatePlace: text('Id of the bundled place whose typical year stands for this one.'),
    climateFrom: choose(
      ['bundled', 'typed', 'file'],
      'Whose climate stands here: that of the bundled place, months typed in, or months of a weather file.',
    ),
    climateName: text('Name of the place those months are of, with the file.'),
    latitude: measure('angle', 'Latitude the sun of those months is reckoned for, north above zero.', {
      min: -Math.PI / 2,
      max: Math.PI / 2,
      decided: true,
    }),
    designTemperature: measure(
      'temperature',
      'Air the heaters are sized for, where it is not the mean of the coldest month of use.',
      { min: 213.15, max: 323.15, decided: true },
    ),
    wind: choose(['open', 'fenced', 'garden', 'walled'], 'How much of the station’s wind the water gets.'),
    designMonth: text('Coldest month of use, 1 to 12.'),
    windSpeed: measure('velocity', 'Design wind speed: a gust of 3 s at 10 m, from the code’s map.', {
      min: 1,
      max: 110,
      decided: true,
    }),
    soundLimit: measure('sound-level', 'At the property line, as the rules of the place ask.', {
      min: 0,
      max: 130,
      decided: true,
    }),
    winterTemperature: measure('temperature', 'Coldest air the propane tank must work in.', {
      min: 213,
      max: 310,
    }),
  },
});
