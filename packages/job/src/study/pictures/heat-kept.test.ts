import { expect, it } from 'vitest';
import { surveyRecords } from '../../schema/index.ts';
import { type PlainJob, plainView } from '../facts/plain-view.ts';
import type { JobView, RecordView } from '../facts/view.ts';
import { KeptBasins } from './heat-kept.ts';
import { HeatPictures, heatPictureOf } from './heat-picture.ts';

const BASIN = {
  use: 'pool',
  where: 'indoors',
  shape: 'rectangle',
  length: 'measured 10 m',
  width: 'measured 5 m',
  depthShallow: 'measured 1.5 m',
  cover: 'bubble',
  coverHours: 'told 12 h',
  airTemperature: 'measured 28 °C',
  airHumidity: 'measured 60 %',
  setTemperature: 'told 27 °C',
  startTemperature: 'told 15 °C',
  warmUpTime: 'told 48 h',
};

function job(): JobView {
  const records = surveyRecords({
    site: { country: 'US', altitude: 'measured 0 ft' },
    heaters: [{ id: 'h1', fuel: 'nameplate natural', input: 'nameplate 137 kBtu/h' }],
    gasSupply: { fuel: 'told natural' },
    basins: [
      { id: 'pool', ...BASIN },
      { id: 'spa', ...BASIN, length: 'measured 2 m', width: 'measured 2 m' },
    ],
  });
  if (!records.ok) throw new Error(JSON.stringify(records.issues));
  return plainView(records.value as PlainJob);
}

/** The job with a reading of the pool laid over it, as an edit or a drag shows it. */
function withPool(view: JobView, field: string, value: number): JobView {
  const over = (record: RecordView): RecordView => ({
    id: record.id,
    reading: (name) => (name === field ? { value, unit: 'h', how: 'told' } : record.reading(name)),
  });
  const list = view.all('basins').map((record) => (record.id === 'pool' ? over(record) : record));
  return {
    all: (collection) => (collection === 'basins' ? list : view.all(collection)),
    record: (collection, id) =>
      (collection === 'basins' ? list.find((one) => one.id === id) : undefined) ??
      view.record(collection, id),
  };
}

it('a wanted hour that moves works out no basin anew; hours under the cover work out theirs alone', () => {
  const view = job();
  const kept = new KeptBasins<object>();
  const made: string[] = [];
  const look = (of: JobView): void => {
    for (const id of ['pool', 'spa'])
      kept.of(of, id, (given) => {
        made.push(id);
        return { hours: given.record('basins', id).reading('coverHours') };
      });
  };
  look(view);
  expect(made.splice(0)).toEqual(['pool', 'spa']);
  for (const hours of [47, 46, 45]) look(withPool(view, 'warmUpTime', hours));
  expect(made).toEqual([]);
  look(withPool(view, 'coverHours', 10));
  expect(made).toEqual(['pool']);
});

it('shows the same as a picture made anew, whatever moved before', () => {
  const view = job();
  const pictures = new HeatPictures();
  const moves: readonly (readonly [string, number])[] = [
    ['warmUpTime', 30],
    ['warmUpTime', 2],
    ['coverHours', 6],
    ['warmUpTime', 48],
  ];
  for (const [field, hours] of moves) {
    const moved = withPool(view, field, hours);
    expect(pictures.of(moved)).toEqual(heatPictureOf(moved));
  }
  const [first] = pictures.of(withPool(view, 'warmUpTime', 30)).basins;
  const [next] = pictures.of(withPool(view, 'warmUpTime', 29)).basins;
  expect(next?.losses).toBe(first?.losses);
  expect(next?.warmUp).toBe(first?.warmUp);
  expect(next?.wanted).toBe(29 * 3600);
});
