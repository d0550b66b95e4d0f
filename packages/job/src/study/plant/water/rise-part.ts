/** Temperature rise across a heater at the least flow it gets while it may run. */
import { evaluate, fail, ok, Recorder, type Result, water } from '@firstfire/engine';
import type { FactKey } from '../../facts/book.ts';
import type { JobView } from '../../facts/view.ts';
import { heatOutput, takeBurner } from '../heat/heating.ts';
import type { Output, Values } from '../model.ts';
import { explainState } from './explain-state.ts';
import type { HeaterState } from './loop-states.ts';
import { type Part, part } from './part.ts';
import { takeDirt, takeStates } from './readings.ts';
import type { LoopAt } from './water-loop.ts';
import type { WaterPlan } from './water-plan.ts';

export function risePart(view: JobView, plan: WaterPlan, heater: string): Part {
  const fact: FactKey = `heater/${heater}/temperature-rise`;
  const states = plan.states.heaters.filter((one) => one.heater === heater);
  return part(view, (reader) => {
    takeStates(reader, plan, states);
    takeDirt(reader, plan);
    const burner = takeBurner(reader, heater);
    const rise = (at: LoopAt, values: Values, recorder?: Recorder): Result<number> => {
      const least = leastFlow({ at, values, states });
      if (!least.ok) return least;
      const heat = heatOutput([burner], values, recorder);
      if (!heat.ok) return heat;
      const { density, specificHeat } = at.pad.water;
      const found = evaluate(
        water.temperatureRise,
        { heat: heat.value, flow: least.value.flow, density, specificHeat },
        recorder,
      );
      if (found.ok) return found;
      return fail(...found.issues.map((one) => ({ ...one, where: `heaters/${heater}/input` })));
    };
    return {
      provides: [fact],
      run: (at, values): Result<readonly Output[]> => {
        const found = rise(at, values);
        return found.ok ? ok([{ fact, value: found.value, kind: 'temperature-difference' }]) : found;
      },
      explain: (_fact, at, values) => {
        const recorder = new Recorder();
        rise(at, values, recorder);
        const least = leastFlow({ at, values, states });
        const solved = least.ok ? explainState({ at, values }, least.value.state) : [];
        return [...recorder.steps, ...solved];
      },
    };
  });
}

interface Asked {
  readonly at: LoopAt;
  readonly values: Values;
  readonly states: readonly HeaterState[];
}

interface Least {
  readonly flow: number;
  readonly state: HeaterState;
}

function leastFlow({ at, values, states }: Asked): Result<Least> {
  let least: Least | undefined;
  for (const state of states) {
    const solution = at.solve(state, values);
    if (!solution.ok) return solution;
    const flow = solution.value.heaters[at.plan.heaters.indexOf(state.heater)]?.flow ?? Number.NaN;
    if (least === undefined || flow < least.flow) least = { flow, state };
  }
  return least === undefined ? fail() : ok(least);
}
