/**
 * The window of a heater's water-pressure switch: between what it sees at rest and the least it sees while the heater
 * may run. A heater with a flow switch has none.
 */
import { fail, ok, quantity, Recorder, type Result, type Step, traced, water } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { SurveyReader, Where } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Output, Values } from '../model.ts';
import { explainState } from './explain-state.ts';
import type { HeaterState } from './loop-states.ts';
import { type Part, part } from './part.ts';
import { takeDirt, takeStates } from './readings.ts';
import type { LoopAt } from './water-loop.ts';
import type { WaterPlan } from './water-plan.ts';

/** What is kept on either side: the spread of the switch and of the gauge that sets it. Common practice, no source. */
const MARGIN = 0.25 * quantity.PSI;

/** Between closing and opening, where the nameplate does not say. Common practice, no source. */
const USUAL_DIFFERENTIAL = { value: 0.5 * quantity.PSI, kind: 'pressure-difference' } as const;

const FACTS = ['switch-low', 'switch-high', 'switch-running', 'switch-limit'] as const;

export function switchFacts(heater: string): readonly FactKey[] {
  return FACTS.map((name): FactKey => `heater/${heater}/${name}`);
}

export function switchPart(view: JobView, plan: WaterPlan, heater: string): Part {
  const key = (name: (typeof FACTS)[number]): FactKey => `heater/${heater}/${name}`;
  const states = plan.states.heaters.filter((one) => one.heater === heater);
  return part(view, (reader) => {
    const of = (field: string): Where => ({ collection: 'heaters', id: heater, field });
    takeStates(reader, plan, states);
    takeDirt(reader, plan);
    reader.word(of('switchKind'));
    reader.numberOrUsual(of('switchDifferential'), USUAL_DIFFERENTIAL);
    const range = takeRange(reader, heater);
    return {
      provides: switchFacts(heater),
      run: (at, values): Result<readonly Output[]> => {
        const ends = endsOf({ at, values, states, heater });
        if (!ends.ok) return ends;
        const { low, high, running } = limits(ends.value, heater, values);
        const [least, most] = range(values);
        const limit = low > high ? 'flow-switch' : low > most || high < least ? 'range' : 'none';
        return ok([
          { fact: key('switch-low'), value: Math.max(low, least), kind: 'pressure' },
          { fact: key('switch-high'), value: Math.min(high, most), kind: 'pressure' },
          { fact: key('switch-running'), value: running, kind: 'pressure' },
          { fact: key('switch-limit'), word: limit },
        ]);
      },
      explain: (fact, at, values) => explain({ at, values, states, heater }, fact),
    };
  });
}

/** Settings the switch can be turned to; any, where nobody read them. */
function takeRange(reader: SurveyReader, id: string): (values: Values) => readonly [number, number] {
  const known = (['switchLeast', 'switchGreatest'] as const).map((field) => {
    const where = { collection: 'heaters', id, field };
    if (!reader.has(where)) return undefined;
    reader.number(where);
    return readingPath('heaters', id, field);
  });
  const [least, most] = known;
  return (values) => [
    least === undefined ? Number.NEGATIVE_INFINITY : values(least),
    most === undefined ? Number.POSITIVE_INFINITY : values(most),
  ];
}

interface Asked {
  readonly at: LoopAt;
  readonly values: Values;
  readonly states: readonly HeaterState[];
  readonly heater: string;
}

interface Ends {
  /** Highest gauge pressure at the switch with the pump off, Pa. */
  readonly rest: number;
  /** Lowest while the heater may run, and the state that has it. */
  readonly running: number;
  readonly state: HeaterState;
}

function endsOf({ at, values, states, heater }: Asked): Result<Ends> {
  const place = at.plan.heaters.indexOf(heater);
  const spec = at.pad.spec.bank?.heaters[place];
  let found: Ends | undefined;
  for (const state of states) {
    const asked = at.state(state, values);
    if (!asked.ok) return asked;
    const solution = at.solve(state, values);
    if (!solution.ok) return solution;
    const pressure = solution.value.heaters[place]?.inletPressure;
    if (spec === undefined || pressure === undefined) return fail();
    const rest = water.pressureAtRest(at.pad.spec, spec, asked.value);
    const least: Ends =
      found !== undefined && found.running <= pressure ? found : { rest, running: pressure, state };
    found = { ...least, rest: Math.max(rest, found?.rest ?? rest) };
  }
  return found === undefined ? fail() : ok(found);
}

function limits({ rest, running }: Ends, heater: string, values: Values, recorder?: Recorder) {
  const differential = values(readingPath('heaters', heater, 'switchDifferential'));
  const low = traced(water.switchLowest, { rest, differential, margin: MARGIN }, recorder);
  const high = traced(water.switchHighest, { running, margin: MARGIN }, recorder);
  return { low, high, running };
}

/** The lowest setting stands on the water at rest, the highest on the state that gives the least pressure. */
function explain(asked: Asked, fact: FactKey): readonly Step[] {
  const ends = endsOf(asked);
  if (!ends.ok) return [];
  const recorder = new Recorder();
  limits(ends.value, asked.heater, asked.values, recorder);
  const [lowest, highest] = recorder.steps;
  if (fact.endsWith('/switch-low')) return lowest ? [lowest] : [];
  if (!fact.endsWith('/switch-high') || highest === undefined) return [];
  return [highest, ...explainState(asked, ends.value.state)];
}
