/** How far fans and burners pull the room below the pressure outdoors. */
import { air, evaluate, ok, properties, type Recorder, type Result } from '@firstfire/engine';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Values } from '../model.ts';
import { answers } from './answer.ts';
import { orZero, takeBurners, takeOpenings, takeSize, totalOf } from './room.ts';
import { atSpot, type HeaterSpot } from './spot.ts';

/** Of the air outdoors, K (15 °C). */
const OUTDOORS = 288.15;
const ALTITUDE = { collection: 'site', id: '-', field: 'altitude' };

export function roomPullModel(view: JobView, at: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  const burners = takeBurners(reader, at);
  const size = takeSize(reader, at.spot);
  const openings = takeOpenings(reader, at.spot);
  reader.number(atSpot(at.spot)('exhaustFan'));
  reader.numberOr(atSpot(at.spot)('mechanicalAir'), 0);
  // Unknown, the place counts as at sea level, where the air is heaviest and the pull the largest.
  reader.numberOr(ALTITUDE, 0);
  const of = (values: Values, field: string): number => orZero(values(readingPath('spots', at.spot, field)));
  const find = (values: Values, recorder?: Recorder): Result<number> => {
    const heatInput = totalOf(burners(values));
    const taken = evaluate(air.mechanicalSupply, { heatInput, exhaust: of(values, 'exhaustFan') }, recorder);
    if (!taken.ok) return taken;
    const flow = taken.value - of(values, 'mechanicalAir');
    if (flow <= 0) return ok(0);
    const { low, high } = openings(values);
    const area = low + high + air.LEAST_CRACKS * size(values).shell;
    const altitude = orZero(values(readingPath('site', '-', 'altitude')));
    const density = properties.standardPressureAt(altitude) / (air.AIR_CONSTANT * OUTDOORS);
    return evaluate(air.roomPull, { flow, area, density }, recorder);
  };
  return answers({ fact: `heater/${at.heater}/room-pull`, kind: 'pressure-difference', reader, find });
}
