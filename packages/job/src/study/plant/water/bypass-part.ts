/** The bypass opening that holds every heater inside its band at all speeds and filter states, or why none does. */
import { fail, ok, Recorder, type Result, type Step, water } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Output, Values } from '../model.ts';
import { BYPASS_OPENING } from './equipment.ts';
import { FILTER_STATES } from './loop-states.ts';
import { type Part, part } from './part.ts';
import { readingOf } from './reading-of.ts';
import { takeDirt, takeSpeeds } from './readings.ts';
import type { LoopAt, StateAsked } from './water-loop.ts';
import type { WaterPlan } from './water-plan.ts';

const FACTS = ['bypass-low', 'bypass-high', 'bypass-found', 'bypass-between'] as const;

/** Ids of states that stand in one word. */
const SEPARATOR = '|';

const key = (name: (typeof FACTS)[number]): FactKey => `job/-/${name}`;

export const BYPASS_FACTS: readonly FactKey[] = FACTS.map(key);

export function bypassPart(view: JobView, plan: WaterPlan): Part {
  const states = plan.states.heating.flatMap((state) =>
    FILTER_STATES.map((filter) => ({ ...state, filter })),
  );
  return part(view, (reader) => {
    // Where the handle stands counts for nothing here.
    takeSpeeds(reader, plan, states);
    takeDirt(reader, plan);
    for (const id of plan.heaters) {
      for (const field of ['flowLeast', 'flowGreatest']) reader.number({ collection: 'heaters', id, field });
    }
    return {
      provides: BYPASS_FACTS,
      run: (at, values): Result<readonly Output[]> => {
        const found = shared({ at, values, states });
        return found.ok ? ok(outputs(plan, states, found.value)) : found;
      },
      explain: (fact, at, values) => (fact === key('bypass-found') ? explain({ at, values, states }) : []),
    };
  });
}

interface Asked {
  readonly at: LoopAt;
  readonly values: Values;
  readonly states: readonly StateAsked[];
}

function padStates({ at, values, states }: Asked): Result<readonly water.PadState[]> {
  const made: water.PadState[] = [];
  for (const asked of states) {
    const state = at.state(asked, values);
    if (!state.ok) return state;
    made.push({ ...state.value, bypass: 0 });
  }
  return ok(made);
}

function bandsOf({ plan }: LoopAt, values: Values): water.FlowBand[] {
  const of = (id: string, field: string): number => values(readingPath('heaters', id, field));
  return plan.heaters.map((id) => ({ least: of(id, 'flowLeast'), most: of(id, 'flowGreatest') }));
}

function shared(asked: Asked): Result<water.SharedOpening> {
  const states = padStates(asked);
  if (!states.ok) return states;
  const { at, values } = asked;
  const found = water.sharedOpening(at.pad, {
    states: states.value,
    bands: bandsOf(at, values),
    ...standingOf(asked),
  });
  return found.ok ? found : fail(...found.issues.map((issue) => readingOf(at.plan, issue)));
}

/** What the states show as the handle stands, where that is known. */
function standingOf({ at, values, states }: Asked): Pick<water.OpeningAsked, 'standing'> {
  if (Number.isNaN(values(BYPASS_OPENING))) return {};
  const standing: water.BankFlows[] = [];
  for (const state of states) {
    const solution = at.solveAnyhow(state, values);
    if (!solution.ok) return {};
    const { heaters, flow: total, bypassFlow: bypass } = solution.value;
    standing.push({ heaters: heaters.map((one) => one.flow), total, bypass });
  }
  return { standing };
}

function outputs(plan: WaterPlan, states: readonly StateAsked[], found: water.SharedOpening): Output[] {
  if (found.found === 'interval') {
    return [
      { fact: key('bypass-low'), value: found.low, kind: 'ratio' },
      { fact: key('bypass-high'), value: found.high, kind: 'ratio' },
      { fact: key('bypass-found'), word: 'interval' },
      { fact: key('bypass-between'), word: '' },
    ];
  }
  const ids = found.between.map(({ state, heater }) => subjectOf(plan, states[state], plan.heaters[heater]));
  return [
    { fact: key('bypass-low'), notApplicable: true },
    { fact: key('bypass-high'), notApplicable: true },
    { fact: key('bypass-found'), word: found.reason },
    { fact: key('bypass-between'), word: ids.join(SEPARATOR) },
  ];
}

/** The subject that is a heater in a state; that of the state's first heater where this one does not run in it. */
function subjectOf({ states }: WaterPlan, asked: StateAsked | undefined, heater: string | undefined): string {
  const here = states.heaters.filter(
    (one) => one.speed === asked?.speed && one.basin === asked.basin && one.filter === asked.filter,
  );
  return (here.find((one) => one.heater === heater) ?? here[0])?.id ?? '';
}

/** The opening each state would bear by itself. */
function explain(asked: Asked): readonly Step[] {
  const recorder = new Recorder();
  const made = padStates(asked);
  for (const [place, state] of (made.ok ? made.value : []).entries()) {
    const of = asked.states[place];
    if (of !== undefined) explainState(asked, { state, of }, recorder);
  }
  return recorder.steps;
}

interface OneState {
  readonly state: water.PadState;
  readonly of: StateAsked;
}

function explainState({ at, values }: Asked, { state, of }: OneState, recorder: Recorder): void {
  const alone = water.sharedOpening(at.pad, { states: [state], bands: bandsOf(at, values) });
  if (!alone.ok) return;
  recorder.open();
  recorder.given({ id: 'water.filter-loading', value: state.loading ?? 1, kind: 'ratio' });
  if (alone.value.found === 'interval') {
    recorder.given({ id: 'water.bypass-low', value: alone.value.low, kind: 'ratio' });
    recorder.given({ id: 'water.bypass-high', value: alone.value.high, kind: 'ratio' });
  } else if (alone.value.reason === 'too-much') {
    recorder.given({ id: 'water.bypass-too-much', value: 1, kind: 'ratio' });
  } else recorder.given({ id: 'water.bypass-too-little', value: 0, kind: 'ratio' });
  const { nameOf } = at.plan;
  const about = { speed: nameOf('pumpSpeeds', of.speed), basin: nameOf('basins', of.basin) };
  recorder.closeGroup({ id: of.filter === 'clean' ? 'water.bypass-clean' : 'water.bypass-dirty', about });
}
