/**
 * Time in which a basin's water passes the filter once, at the speed kept for filtration.
 *
 * Reckoned with a filter that is due: the time asked for must still be kept when it is about to be cleaned.
 */
import { evaluate, fail, ok, Recorder, type Result, water } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { type JobView, type ReadingPath, readingPath } from '../../facts/view.ts';
import { recordMeasures } from '../heat/basin-model.ts';
import { measureBasin, takeShape } from '../heat/basin-shape.ts';
import type { Output, Values } from '../model.ts';
import { explainState } from './explain-state.ts';
import type { LoopState } from './loop-states.ts';
import { type Part, part } from './part.ts';
import { takeDirt, takeStates } from './readings.ts';
import type { LoopAt } from './water-loop.ts';
import type { WaterPlan } from './water-plan.ts';

export function turnoverPart(view: JobView, plan: WaterPlan, basin: string): Part {
  const fact: FactKey = `basin/${basin}/turnover-time`;
  const states = filtrationStates(plan, basin);
  return part(view, (reader) => {
    if (states.length > 0) takeStates(reader, plan, states);
    else reader.missing.push(notServed(plan, basin));
    takeDirt(reader, plan);
    const shape = takeShape(reader, basin);
    const time = (at: LoopAt, values: Values, recorder?: Recorder): Result<number> => {
      const measured = measureBasin(shape, values);
      if (!measured.ok)
        return fail(...measured.issues.map((one) => ({ ...one, where: `basins/${basin}/${one.where}` })));
      const state = slowest(states, values);
      if (state === undefined) return fail();
      const solution = at.solve({ ...state, filter: 'dirty' }, values);
      if (!solution.ok) return solution;
      const { volume } = measured.value;
      const found = evaluate(water.turnover, { volume, flow: solution.value.flow }, recorder);
      return found.ok ? found : fail(...found.issues.map((one) => ({ ...one, where: speedOf(state) })));
    };
    return {
      provides: [fact],
      run: (at, values): Result<readonly Output[]> => {
        const found = time(at, values);
        return found.ok ? ok([{ fact, value: found.value, kind: 'time' }]) : found;
      },
      explain: (_fact, at, values) => {
        const recorder = new Recorder();
        recordMeasures(recorder, shape, measureBasin(shape, values));
        time(at, values, recorder);
        const state = slowest(states, values);
        const solved = state ? explainState({ at, values }, { ...state, filter: 'dirty' }) : [];
        return [...recorder.steps, ...solved];
      },
    };
  });
}

/** A speed at which the heater is off is kept for filtration; where a basin has none, any that serves it. */
function filtrationStates({ states }: WaterPlan, basin: string): readonly LoopState[] {
  const serving = states.all.filter((one) => one.basin === basin);
  const cold = serving.filter(
    (one) => !states.heating.some((hot) => hot.speed === one.speed && hot.basin === basin),
  );
  return cold.length > 0 ? cold : serving;
}

/** What nobody has said: which run leads to the basin, or else at which speed it is turned over. */
function notServed({ states }: WaterPlan, basin: string): ReadingPath {
  if (!states.basins.includes(basin)) return readingPath('waterRuns', '-', 'basin');
  return readingPath('pumpSpeeds', '-', 'basins');
}

function speedOf({ speed }: LoopState): ReadingPath {
  return readingPath('pumpSpeeds', speed, 'speed');
}

function slowest(states: readonly LoopState[], values: Values): LoopState | undefined {
  return states.reduce<LoopState | undefined>(
    (least, one) => (least === undefined || values(speedOf(one)) < values(speedOf(least)) ? one : least),
    undefined,
  );
}
