/** The working of a solved state, with the parts of the pad under the names that people gave their records. */
import { Recorder, type Step, water } from '@firstfire/engine';
import type { Values } from '../model.ts';
import { linksByRun } from './links.ts';
import { WATER_RUNS } from './runs.ts';
import type { LoopAt, StateAsked } from './water-loop.ts';

export interface Solved {
  readonly at: LoopAt;
  readonly values: Values;
}

/** Speed, filter, valves, and every part the water passes with the head it loses there. */
export function explainState({ at, values }: Solved, asked: StateAsked): readonly Step[] {
  const state = at.state(asked, values);
  if (!state.ok) return [];
  const recorder = new Recorder();
  const reading = `pumpSpeeds/${asked.speed}/speed`;
  const speed = values(`pumpSpeeds/${asked.speed}/speed`);
  recorder.given({ id: 'reading', value: speed, kind: 'frequency', reading });
  recorder.given({ id: 'water.speed-ratio', value: state.value.speed, kind: 'ratio' });
  recorder.given({ id: 'water.filter-loading', value: state.value.loading ?? 1, kind: 'ratio' });
  water.explainPad(at.pad, state.value, recorder);
  return named(at, recorder.steps);
}

/** Steps with run names in place of the names of links. */
function named(at: LoopAt, steps: readonly Step[]): readonly Step[] {
  const names = linkNames(at);
  const rename = (step: Step): Step => {
    if (step.step === 'given') return step;
    const children = step.children.map(rename);
    const name = step.step === 'group' ? names.get(String(step.about?.['part'])) : undefined;
    if (step.step === 'formula' || name === undefined) return { ...step, children };
    return { ...step, children, about: { ...step.about, part: name } };
  };
  return steps.map((step) => rename(withoutPorts(step)));
}

/** Ports of the valves count among the fittings of their runs here: they have no loss of their own. */
function withoutPorts(step: Step): Step {
  if (step.step !== 'group' || step.id !== 'water.pad') return step;
  return {
    ...step,
    children: step.children.filter((one) => one.step !== 'group' || one.id !== 'water.pad-port'),
  };
}

function linkNames(at: LoopAt): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  for (const [id, links] of linksByRun(at.plan)) {
    for (const link of links) names.set(link, at.plan.nameOf(WATER_RUNS, id));
    for (const link of links)
      names.set(link.replace(/\.inlet\./, '.outlet.'), at.plan.nameOf(WATER_RUNS, id));
  }
  for (const id of at.plan.heaters) names.set(`heater.${id}`, at.plan.nameOf('heaters', id));
  return names;
}
