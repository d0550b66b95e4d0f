import { choose, curve, measure, text, yesNo } from './field.ts';
import { record } from './record.ts';

/** A pool or spa. */
export const basin = record({
  collection: 'basins',
  single: false,
  version: 1,
  fields: {
    name: text('What people call it.'),
    use: choose(['pool', 'spa', 'wading'], 'What it is used for.'),
    where: choose(['outdoors', 'indoors'], 'Under the sky or under a roof.'),
    shape: choose(
      ['rectangle', 'round', 'oval', 'stadium', 'kidney', 'L', 'polygon'],
      'Outline of the water surface.',
    ),
    length: measure('length', 'Longest side or axis.', { min: 0.5, max: 200 }),
    width: measure('length', 'Side or axis across it; of a kidney the wider end.', { min: 0.5, max: 100 }),
    widthNarrow: measure('length', 'Narrower end of a kidney.', { min: 0.5, max: 100 }),
    legLength: measure('length', 'Length of the leg of an L beyond the main rectangle.', {
      min: 0.1,
      max: 100,
    }),
    legWidth: measure('length', 'Width of that leg.', { min: 0.1, max: 100 }),
    corners: curve({ x: 'length', y: 'length', trend: 'rises' }, 'Corner points of a polygon, in order.'),
    depthShallow: measure('length', 'Water depth at the shallow end.', { min: 0.1, max: 10 }),
    depthDeep: measure('length', 'Water depth at the deep end.', { min: 0.1, max: 10 }),
    volume: measure('volume', 'Where it is known better than the shape.', { min: 0.1, max: 20_000 }),
    setTemperature: measure('temperature', 'Wanted water temperature.', {
      min: 273.15,
      max: 330,
      decided: true,
    }),
    startTemperature: measure('temperature', 'Water temperature before warming up.', {
      min: 273.15,
      max: 330,
    }),
    warmUpTime: measure('time', 'Time in which it shall be warm.', {
      min: 60,
      max: 30 * 86_400,
      decided: true,
    }),
    cover: choose(['none', 'bubble', 'track', 'foam', 'discs', 'liquid'], 'Cover when not in use.'),
    otherHeat: measure(
      'ratio',
      'Share of its heat over a season from sun, heat pump or waste; zero where none.',
      {
        min: 0,
        max: 1,
      },
    ),
    coverHours: measure('time', 'Hours a day with the cover on.', { min: 0, max: 86_400 }),
    seasonFirst: text('First month of use, 1 to 12.'),
    seasonLast: text('Last month of use, 1 to 12.'),
    days: choose(
      ['all', 'weekends'],
      'Days on which it is heated: all, or from Friday noon to Sunday night.',
    ),
    setBackTemperature: measure('temperature', 'Lower temperature for some hours of the day.', {
      min: 273.15,
      max: 330,
      decided: true,
    }),
    setBackFrom: measure('time', 'Hour of the day from which it is let down.', {
      min: 0,
      max: 86_400,
      decided: true,
    }),
    setBackTo: measure('time', 'Hour of the day at which it is wanted warm again.', {
      min: 0,
      max: 86_400,
      decided: true,
    }),
    activity: measure('ratio', 'Activity factor of an indoor pool.', { min: 0.3, max: 3 }),
    airTemperature: measure('temperature', 'Room air of an indoor pool.', { min: 273.15, max: 330 }),
    airHumidity: measure('ratio', 'Relative humidity of that air.', { min: 0, max: 1 }),
    turnover: measure('time', 'Time in which the whole water shall pass the filter.', {
      min: 600,
      max: 200_000,
      decided: true,
    }),
    heatedBy: text('Heaters that warm it, by id, separated by spaces; all of them when left out.'),
    spillway: text('Id of the basin it spills into.'),
    spillwayFlow: measure('volume-flow', 'Water that runs over that spillway and is pumped back.', {
      min: 0,
      max: 0.1,
    }),
    spillwayFrom: measure('time', 'Hour of the day from which it runs.', {
      min: 0,
      max: 86_400,
      decided: true,
    }),
    spillwayTo: measure('time', 'Hour of the day at which it stops.', {
      min: 0,
      max: 86_400,
      decided: true,
    }),
    onLoop: yesNo('Turned over by the water loop surveyed here; no for one with a circulation of its own.'),
  },
});
