/** The greatest flows: what each run, each heater and the filter see with the filter clean, whatever the speed. */
import { fail, ok, Recorder, type Result, traced, water } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { JobView } from '../../facts/view.ts';
import type { Output, Values } from '../model.ts';
import { explainState } from './explain-state.ts';
import { linksByRun } from './links.ts';
import type { LoopState } from './loop-states.ts';
import { type Part, part } from './part.ts';
import { takeStates } from './readings.ts';
import { WATER_RUNS } from './runs.ts';
import type { LoopAt } from './water-loop.ts';
import type { WaterPlan } from './water-plan.ts';

/** A flow that a solved state shows, m3/s, signed. */
type FlowOf = (solution: water.PadSolution, at: LoopAt) => number;

export interface Greatest {
  readonly flow: number;
  readonly state: LoopState;
}

/** The greatest of a flow over all states, and the state that has it. */
export function greatestFlow(at: LoopAt, values: Values, flowOf: FlowOf): Result<Greatest> {
  let greatest: Greatest | undefined;
  for (const state of at.plan.states.all) {
    const solution = at.solve({ ...state, filter: 'clean' }, values);
    if (!solution.ok) return solution;
    const flow = Math.abs(flowOf(solution.value, at));
    if (greatest === undefined || flow > greatest.flow) greatest = { flow, state };
  }
  return greatest === undefined ? fail() : ok(greatest);
}

/** The greatest flow of every link over all states, m3/s. */
function greatestFlows(at: LoopAt, values: Values): Result<readonly number[]> {
  let most: readonly number[] | undefined;
  for (const state of at.plan.states.all) {
    const solution = at.solve({ ...state, filter: 'clean' }, values);
    if (!solution.ok) return solution;
    const { flows } = solution.value;
    most = flows.map((flow, link) => Math.max(Math.abs(flow), most?.[link] ?? 0));
  }
  return most === undefined ? fail() : ok(most);
}

/** Velocity in every run; a run that has no place in the loop has none. */
export function velocityPart(view: JobView, plan: WaterPlan): Part {
  const links = linksByRun(plan);
  const fact = (id: string): FactKey => `run/${id}/velocity-greatest`;
  const inRun = (id: string): FlowOf => {
    return ({ flows }, { pad }) =>
      greatest(links.get(id) ?? [], (link) => flows[pad.network.linkIndex(link)] ?? 0);
  };
  return part(view, (reader) => {
    takeStates(reader, plan, plan.states.all);
    return {
      provides: view.all(WATER_RUNS).map(({ id }) => fact(id)),
      run: (at, values): Result<readonly Output[]> => {
        const flows = greatestFlows(at, values);
        if (!flows.ok) return flows;
        return ok(
          plan.runs.map(({ id, insideDiameter }): Output => {
            const own = links.get(id) ?? [];
            if (own.length === 0) return { fact: fact(id), notApplicable: true };
            const flow = greatest(own, (link) => flows.value[at.pad.network.linkIndex(link)] ?? 0);
            return {
              fact: fact(id),
              value: water.velocity.kernel({ insideDiameter, flow }),
              kind: 'velocity',
            };
          }),
        );
      },
      explain: (key, at, values) => {
        const run = plan.runs.find((one) => fact(one.id) === key);
        const found = run && greatestFlow(at, values, inRun(run.id));
        if (run === undefined || !found?.ok) return [];
        const recorder = new Recorder();
        traced(water.velocity, { insideDiameter: run.insideDiameter, flow: found.value.flow }, recorder);
        return [
          ...recorder.steps,
          ...explainState({ at, values }, { ...found.value.state, filter: 'clean' }),
        ];
      },
    };
  });
}

/** Flow through each heater's header. */
export function headerPart(view: JobView, plan: WaterPlan): Part {
  const fact = (id: string): FactKey => `heater/${id}/water-flow-greatest`;
  const through = (id: string): FlowOf => {
    const place = plan.heaters.indexOf(id);
    return ({ heaters }) => heaters[place]?.flow ?? Number.NaN;
  };
  return part(view, (reader) => {
    takeStates(reader, plan, plan.states.all);
    return {
      provides: plan.heaters.map(fact),
      run: (at, values): Result<readonly Output[]> => {
        const outputs: Output[] = [];
        for (const id of plan.heaters) {
          const found = greatestFlow(at, values, through(id));
          if (!found.ok) return found;
          outputs.push({ fact: fact(id), value: found.value.flow, kind: 'volume-flow' });
        }
        return ok(outputs);
      },
      explain: (key, at, values) => {
        const id = plan.heaters.find((one) => fact(one) === key);
        const found = id === undefined ? undefined : greatestFlow(at, values, through(id));
        return found?.ok ? explainState({ at, values }, { ...found.value.state, filter: 'clean' }) : [];
      },
    };
  });
}

/** Flow through the filter. */
export function filterFlowPart(view: JobView, plan: WaterPlan): Part {
  const fact: FactKey = `filter/${plan.filter}/flow-greatest`;
  const through: FlowOf = ({ flow }) => flow;
  return part(view, (reader) => {
    takeStates(reader, plan, plan.states.all);
    return {
      provides: [fact],
      run: (at, values): Result<readonly Output[]> => {
        const found = greatestFlow(at, values, through);
        return found.ok ? ok([{ fact, value: found.value.flow, kind: 'volume-flow' }]) : found;
      },
      explain: (_key, at, values) => {
        const found = greatestFlow(at, values, through);
        return found.ok ? explainState({ at, values }, { ...found.value.state, filter: 'clean' }) : [];
      },
    };
  });
}

function greatest(links: readonly string[], flowIn: (link: string) => number): number {
  return links.reduce((most, link) => Math.max(most, Math.abs(flowIn(link))), 0);
}
