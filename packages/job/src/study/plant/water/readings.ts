/** Readings that several parts of the loop take. */
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, type ReadingPath, readingPath } from '../../view.ts';
import { type FilterState, type LoopState, loopStates } from './loop-states.ts';
import type { WaterPlan } from './water-plan.ts';

/** What the states that are asked for depend on beside the pad itself: motor speeds and the bypass handle. */
export function takeStates(reader: SurveyReader, plan: WaterPlan, states: readonly LoopState[]): void {
  for (const id of new Set(states.map((state) => state.speed))) {
    reader.number({ collection: 'pumpSpeeds', id, field: 'speed' });
  }
  if (states.length === 0) reader.missing.push(noStateReading(reader.view));
  if (plan.bypass) reader.number({ collection: 'waterLoop', id: '-', field: 'bypassOpening' });
}

/** The reading that is missing where the heater stands in no state: a speed, a basin, or a speed it may run at. */
export function noStateReading(view: JobView): ReadingPath {
  const [speed] = view.all('pumpSpeeds');
  if (speed === undefined) return readingPath('pumpSpeeds', '-', 'speed');
  const [basin] = loopStates(view).basins;
  return basin === undefined
    ? readingPath('waterRuns', '-', 'basin')
    : readingPath('pumpSpeeds', speed.id, 'heating');
}

/** What a filter that is due depends on. */
export function takeDirt(reader: SurveyReader, { filter }: WaterPlan, state: FilterState = 'dirty'): void {
  if (state === 'clean') return;
  reader.number({ collection: 'filters', id: filter, field: 'dirtyRise' });
  reader.number({ collection: 'filters', id: filter, field: 'cleanSpeed' });
}
