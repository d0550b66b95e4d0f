/** The room a heater has around it, over what the method of one opening asks: an inch beside and behind, six in front. */
import { ok, quantity } from '@firstfire/engine';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { answers } from './answer.ts';
import { atSpot, type HeaterSpot } from './spot.ts';

/** Field of the spot → clearance asked, m. */
const ASKED: Readonly<Record<string, number>> = {
  clearanceLeft: quantity.INCH,
  clearanceRight: quantity.INCH,
  clearanceBack: quantity.INCH,
  clearanceFront: 6 * quantity.INCH,
};

export function oneOpeningModel(view: JobView, { heater, spot }: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  for (const field of Object.keys(ASKED)) reader.number(atSpot(spot)(field));
  return answers({
    fact: `heater/${heater}/one-opening-room`,
    kind: 'ratio',
    reader,
    find: (values, recorder) => {
      const shares = Object.entries(ASKED).map(([field, least]) => {
        const reading = readingPath('spots', spot, field);
        recorder?.given({ id: 'reading', value: values(reading), kind: 'length', reading });
        return values(reading) / least;
      });
      return ok(Math.min(...shares));
    },
  });
}
