/** The states of the loop that rules are asked about: each heater at each speed it may run at, filter clean and due. */
import type { Subject } from '@firstfire/reference';
import { plannedHeaters } from '../../facts/heaters.ts';
import type { JobView } from '../../facts/view.ts';
import { type HeaterState, type LoopStates, loopStates, wordOf } from './loop-states.ts';

export function waterStateSubjects(view: JobView): readonly Subject[] {
  const states = loopStates(view);
  const bare = withoutState(view, states).map((id): Subject => {
    return { scope: 'water-state', id, label: nameOf(view, 'heaters', id) };
  });
  return [...bare, ...states.heaters.map((state) => subjectOf(view, states, state))];
}

/** Heaters of which nobody has said yet at which speed they run: asked about as they are. */
export function withoutState(view: JobView, states: LoopStates): readonly string[] {
  return plannedHeaters(view).filter((id) => !states.heaters.some((state) => state.heater === id));
}

function subjectOf(view: JobView, { basins }: LoopStates, state: HeaterState): Subject {
  const slots = {
    heater: nameOf(view, 'heaters', state.heater),
    speed: nameOf(view, 'pumpSpeeds', state.speed),
    basin: nameOf(view, 'basins', state.basin),
  };
  const phrase = `${state.filter}${basins.length > 1 ? '-with-valves' : ''}`;
  const label = [slots.heater, slots.speed, ...(basins.length > 1 ? [slots.basin] : [])].join(', ');
  return { scope: 'water-state', id: state.id, label, said: { phrase, slots } };
}

function nameOf(view: JobView, collection: string, id: string): string {
  return wordOf(view, { collection, id, field: 'name' }) || id;
}
