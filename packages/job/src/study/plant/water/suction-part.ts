/** How far the water at the pump's inlet stands from boiling, at the greatest flow and with the warmest water. */
import { evaluate, fail, ok, properties, quantity, Recorder, type Result, water } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Output, Values } from '../model.ts';
import { WATER_TEMPERATURE } from './equipment.ts';
import { explainState } from './explain-state.ts';
import type { LoopState } from './loop-states.ts';
import { type Part, part } from './part.ts';
import { takeStates } from './readings.ts';
import type { LoopAt } from './water-loop.ts';
import type { WaterPlan } from './water-plan.ts';

const AVAILABLE: FactKey = 'job/-/suction-head';
const ASKED: FactKey = 'job/-/suction-head-asked';
const ALTITUDE = readingPath('site', '-', 'altitude');

/** Suction head a pool pump asks for where its curve does not say, m. Common practice, no source. */
const USUAL_SUCTION_HEAD = { value: 2, kind: 'head' } as const;

export function suctionPart(view: JobView, plan: WaterPlan): Part {
  const asked = readingPath('pumps', plan.pump, 'suctionHead');
  return part(view, (reader) => {
    takeStates(reader, plan, plan.states.all);
    reader.number({ collection: 'site', id: '-', field: 'altitude' });
    reader.numberOrUsual({ collection: 'pumps', id: plan.pump, field: 'suctionHead' }, USUAL_SUCTION_HEAD);
    const warmest = takeWarmest(reader, plan);
    return {
      provides: [AVAILABLE, ASKED],
      run: (at, values): Result<readonly Output[]> => {
        const least = leastSuction({ at, values, temperature: warmest(values) });
        if (!least.ok) return least;
        return ok([
          { fact: AVAILABLE, value: least.value.head, kind: 'head' },
          { fact: ASKED, value: values(asked), kind: 'head' },
        ]);
      },
      explain: (fact, at, values) => {
        const recorder = new Recorder();
        if (fact === ASKED) {
          recorder.given({ id: 'reading', value: values(asked), kind: 'head', reading: asked });
          return recorder.steps;
        }
        const least = leastSuction({ at, values, temperature: warmest(values) }, recorder);
        return least.ok
          ? [
              ...recorder.steps.slice(-1),
              ...explainState({ at, values }, { ...least.value.state, filter: 'clean' }),
            ]
          : [];
      },
    };
  });
}

/** The warmest water wanted in the loop; the water as found where nobody said what is wanted. */
function takeWarmest(reader: SurveyReader, plan: WaterPlan): (values: Values) => number {
  const wanted = plan.states.basins
    .map((id) => ({ collection: 'basins', id, field: 'setTemperature' }))
    .filter((where) => reader.has(where));
  for (const where of wanted) reader.number(where);
  const readings = wanted.map(({ id }) => readingPath('basins', id, 'setTemperature'));
  return (values) => Math.max(values(WATER_TEMPERATURE), ...readings.map(values));
}

interface Asked {
  readonly at: LoopAt;
  readonly values: Values;
  readonly temperature: number;
}

interface Suction {
  readonly head: number;
  readonly state: LoopState;
}

/** The least over all states; its own step is the last one recorded. */
function leastSuction({ at, values, temperature }: Asked, recorder?: Recorder): Result<Suction> {
  let least: Suction | undefined;
  const heads = at.plan.states.all.map((state) => ({
    state,
    solved: at.solveAnyhow({ ...state, filter: 'clean' }, values),
  }));
  for (const { state, solved } of heads) {
    if (!solved.ok) return solved;
    const found = suctionHead({ at, values, temperature }, solved.value.pumpInletPressure);
    if (!found.ok) return found;
    if (least === undefined || found.value < least.head) least = { head: found.value, state };
  }
  if (least === undefined) return fail();
  const solved = at.solveAnyhow({ ...least.state, filter: 'clean' }, values);
  if (solved.ok && recorder)
    suctionHead({ at, values, temperature }, solved.value.pumpInletPressure, recorder);
  return ok(least);
}

function suctionHead({ values, temperature }: Asked, gauge: number, recorder?: Recorder): Result<number> {
  const { density, vapourPressure } = water.propertiesAt(temperature);
  const found = evaluate(
    water.npshAvailable,
    {
      surfacePressure: properties.standardPressureAt(values(ALTITUDE)),
      vapourPressure,
      density,
      // The gauge pressure at the inlet holds the height and the losses of the suction together.
      lift: -gauge / (density * quantity.STANDARD_GRAVITY),
      suctionLoss: 0,
    },
    recorder,
  );
  return found.ok ? found : fail(...found.issues.map((one) => ({ ...one, where: ALTITUDE })));
}
