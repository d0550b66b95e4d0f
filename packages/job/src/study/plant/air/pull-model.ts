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
/** Beside the exhaust fans. */
const OTHER_FANS = ['dryerAir', 'hoodAir'] as const;
const ALTITUDE = { collection: 'site', id: '-', field: 'altitude' };

export function roomPullModel(view: JobView, at: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  const burners = takeBurners(reader, at);
  const size = takeSize(reader, at.spot);
  const openings = takeOpenings(reader, at.spot);
  reader.number(atSpot(at.spot)('exhaustFan'));
  for (const field of OTHER_FANS) reader.numberOr(atSpot(at.spot)(field), 0);
  const tested = reader.has(atSpot(at.spot)('airChanges'));
  reader.numberOr(atSpot(at.spot)('airChanges'), 0);
  reader.numberOr(atSpot(at.spot)('mechanicalAir'), 0);
  // Unknown, the place counts as at sea level, where the air is heaviest and the pull the largest.
  reader.numberOr(ALTITUDE, 0);
  const of = (values: Values, field: string): number => orZero(values(readingPath('spots', at.spot, field)));
  const find = (values: Values, recorder?: Recorder): Result<number> => {
    const heatInput = totalOf(burners(values));
    const exhaust = ['exhaustFan', ...OTHER_FANS].reduce((sum, field) => sum + of(values, field), 0);
    const taken = evaluate(air.mechanicalSupply, { heatInput, exhaust }, recorder);
    if (!taken.ok) return taken;
    const flow = taken.value - of(values, 'mechanicalAir');
    if (flow <= 0) return ok(0);
    const altitude = orZero(values(readingPath('site', '-', 'altitude')));
    const density = properties.standardPressureAt(altitude) / (air.AIR_CONSTANT * OUTDOORS);
    const { volume, shell } = size(values);
    const airChanges = of(values, 'airChanges');
    const cracks = tested
      ? evaluate(air.leakArea, { airChanges, volume, density }, recorder)
      : ok(air.LEAST_CRACKS * shell);
    if (!cracks.ok) return cracks;
    const { low, high } = openings(values);
    return evaluate(air.roomPull, { flow, area: low + high + cracks.value, density }, recorder);
  };
  return answers({ fact: `heater/${at.heater}/room-pull`, kind: 'pressure-difference', reader, find });
}
