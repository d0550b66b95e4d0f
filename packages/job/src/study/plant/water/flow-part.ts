/** Flow through the heaters at one pump speed with the filter clean or due. */
import { ok, type Result } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { JobView } from '../../facts/view.ts';
import type { Output } from '../model.ts';
import { explainState } from './explain-state.ts';
import type { FilterState, HeaterState } from './loop-states.ts';
import { type Part, part } from './part.ts';
import { takeDirt, takeStates } from './readings.ts';
import type { WaterPlan } from './water-plan.ts';

export interface Speed {
  readonly speed: string;
  readonly filter: FilterState;
}

export function flowFact({ id }: HeaterState): FactKey {
  return `water-state/${id}/heater-flow`;
}

export function flowPart(view: JobView, plan: WaterPlan, { speed, filter }: Speed): Part {
  const states = plan.states.heaters.filter((one) => one.speed === speed && one.filter === filter);
  return part(view, (reader) => {
    takeStates(reader, plan, states);
    takeDirt(reader, plan, filter);
    return {
      provides: states.map(flowFact),
      run: (at, values): Result<readonly Output[]> => {
        const outputs: Output[] = [];
        for (const state of states) {
          const solution = at.solve(state, values);
          if (!solution.ok) return solution;
          const value = solution.value.heaters[plan.heaters.indexOf(state.heater)]?.flow ?? Number.NaN;
          outputs.push({ fact: flowFact(state), value, kind: 'volume-flow' });
        }
        return ok(outputs);
      },
      explain: (fact, at, values) => {
        const state = states.find((one) => flowFact(one) === fact);
        return state ? explainState({ at, values }, state) : [];
      },
    };
  });
}

/** The parts of all speeds at which a heater may run. */
export function flowParts(view: JobView, plan: WaterPlan): readonly Part[] {
  const speeds = [...new Set(plan.states.heaters.map((one) => one.speed))];
  return speeds.flatMap((speed) =>
    (['clean', 'dirty'] as const).map((filter) => flowPart(view, plan, { speed, filter })),
  );
}
