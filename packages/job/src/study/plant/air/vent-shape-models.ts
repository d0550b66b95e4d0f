/** Figures of a vent that follow from its shape: how wide over the flue outlet, how level, how long, how it draws. */
import { air, evaluate, fail, ok, properties } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { answers } from './answer.ts';
import { orZero } from './room.ts';
import { atHeater, atSpot, type HeaterSpot } from './spot.ts';

/** Air outdoors on a mild day, K (15 °C): colder air draws more. */
const OUTDOORS = 288.15;

/** Inside of vent or chimney over that of the heater’s flue outlet. */
export function areaRatio(view: JobView, { heater, spot }: HeaterSpot, masonry: boolean): Model {
  const reader = new SurveyReader(view);
  const field = masonry ? 'chimneyArea' : 'ventDiameter';
  reader.number(atSpot(spot)(field));
  reader.number(atHeater(heater, 'flueOutlet'));
  const [vent, outlet] = [readingPath('spots', spot, field), readingPath('heaters', heater, 'flueOutlet')];
  return answers({
    fact: `heater/${heater}/${masonry ? 'chimney-ratio' : 'vent-ratio'}`,
    kind: 'ratio',
    reader,
    find: (values, recorder) => {
      const round = Math.PI / 4;
      const inside = masonry ? values(vent) : round * values(vent) ** 2;
      recorder?.given({
        id: 'reading',
        value: values(vent),
        kind: masonry ? 'area' : 'diameter',
        reading: vent,
      });
      recorder?.given({ id: 'reading', value: values(outlet), kind: 'diameter', reading: outlet });
      return ok(inside / (round * values(outlet) ** 2));
    },
  });
}

/** Horizontal run over the height of the vent. */
export function levelShare(view: JobView, { heater, spot }: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  for (const field of ['ventLateral', 'ventHeight']) reader.number(atSpot(spot)(field));
  const [run, rise] = [readingPath('spots', spot, 'ventLateral'), readingPath('spots', spot, 'ventHeight')];
  return answers({
    fact: `heater/${heater}/connector-share`,
    kind: 'ratio',
    reader,
    find: (values, recorder) => {
      for (const reading of [run, rise])
        recorder?.given({ id: 'reading', value: values(reading), kind: 'length', reading });
      const height = values(rise);
      return height > 0
        ? ok(values(run) / height)
        : fail({ code: 'out-of-range', where: rise, found: height, reason: 'vent-without-height' });
    },
  });
}

/** Of a sealed vent: its run with each elbow counted as the length its maker gives. */
export function sealedLength(view: JobView, { heater, spot }: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  for (const field of ['ventLateral', 'ventHeight']) reader.number(atSpot(spot)(field));
  reader.number(atHeater(heater, 'ventElbow'));
  const { 'elbow-90': sharp = 0, 'elbow-45': slight = 0 } = reader.counts(atSpot(spot)('ventFittings'));
  const paths = ['ventLateral', 'ventHeight'].map((field) => readingPath('spots', spot, field));
  const elbow = readingPath('heaters', heater, 'ventElbow');
  return answers({
    fact: `heater/${heater}/vent-length`,
    kind: 'length',
    reader,
    find: (values, recorder) => {
      for (const reading of [...paths, elbow])
        recorder?.given({ id: 'reading', value: values(reading), kind: 'length', reading });
      const elbows = (sharp + slight / 2) * values(elbow);
      return ok(paths.reduce((sum, path) => sum + values(path), elbows));
    },
  });
}

/** Draught of the vent on a mild day, its gas as warm as a draught hood leaves it: all there is to draw with. */
export function draughtAtSite(view: JobView, { heater, spot }: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  reader.number(atSpot(spot)('ventHeight'));
  // Unknown, the place counts as at sea level, as for the pull it is held against.
  reader.numberOr({ collection: 'site', id: '-', field: 'altitude' }, 0);
  const fact: FactKey = `heater/${heater}/vent-draught`;
  return answers({
    fact,
    kind: 'pressure-difference',
    reader,
    find: (values, recorder) =>
      evaluate(
        air.draught,
        {
          height: values(readingPath('spots', spot, 'ventHeight')),
          gasTemperature: OUTDOORS + air.BURNERS.natural.rise,
          airTemperature: OUTDOORS,
          atmosphere: properties.standardPressureAt(orZero(values(readingPath('site', '-', 'altitude')))),
        },
        recorder,
      ),
  });
}
