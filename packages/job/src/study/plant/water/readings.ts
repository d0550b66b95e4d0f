/** Readings that several parts of the loop take: read once, and handed to each. */
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, type ReadingPath, readingPath } from '../../facts/view.ts';
import { type FilterState, type LoopState, loopStates } from './loop-states.ts';
import type { WaterPlan } from './water-plan.ts';

/** What the states that are asked for depend on beside the pad itself: motor speeds and the bypass handle. */
export function takeStates(reader: SurveyReader, plan: WaterPlan, states: readonly LoopState[]): void {
  takeSpeeds(reader, plan, states);
  if (!plan.bypass) return;
  take(reader, plan, 'handle', (own) =>
    own.number({ collection: 'waterLoop', id: '-', field: 'bypassOpening' }),
  );
}

/** The same, wherever the handle may stand. */
export function takeSpeeds(reader: SurveyReader, plan: WaterPlan, states: readonly LoopState[]): void {
  const speeds = new Set(states.map((state) => state.speed));
  for (const id of speeds) {
    take(reader, plan, `speed ${id}`, (own) => own.number({ collection: 'pumpSpeeds', id, field: 'speed' }));
  }
  if (speeds.size === 0) reader.missing.push(noStateReading(reader.view));
}

/** What a filter that is due depends on. */
export function takeDirt(reader: SurveyReader, plan: WaterPlan, state: FilterState = 'dirty'): void {
  if (state === 'clean') return;
  const id = plan.filter;
  take(reader, plan, 'dirt', (own) => {
    own.number({ collection: 'filters', id, field: 'dirtyRise' });
    own.number({ collection: 'filters', id, field: 'cleanSpeed' });
  });
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

const taken = new WeakMap<WaterPlan, Map<string, SurveyReader>>();

/** Adds to a reader what another one, kept for the plan by a name, has taken. */
function take(reader: SurveyReader, plan: WaterPlan, name: string, read: (own: SurveyReader) => void): void {
  const known = taken.get(plan) ?? new Map<string, SurveyReader>();
  taken.set(plan, known);
  let own = known.get(name);
  if (own === undefined) {
    own = new SurveyReader(reader.view);
    read(own);
    known.set(name, own);
  }
  reader.parameters.push(...own.parameters);
  reader.missing.push(...own.missing);
  reader.wrong.push(...own.wrong);
}
