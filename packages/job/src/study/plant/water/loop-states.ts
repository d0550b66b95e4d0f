/**
 * The states a water loop can stand in: at which speed its pump runs, which basin the valves serve, whether the filter
 * is clean or due. Found from words alone, so that they are known before any figure is.
 */
import { plannedHeaters } from '../../facts/heaters.ts';
import { recordFacts } from '../../facts/record-facts.ts';
import type { JobView } from '../../facts/view.ts';

/** Due: at the rise at which it is cleaned. */
export const FILTER_STATES = ['clean', 'dirty'] as const;

export type FilterState = (typeof FILTER_STATES)[number];

/** One way pump and valves can stand. */
export interface LoopState {
  /** Id of the pump speed. */
  readonly speed: string;
  /** Id of the basin that the valves serve. */
  readonly basin: string;
}

/** A heater in a state in which it may run. */
export interface HeaterState extends LoopState {
  /** Its id as a subject: `h1 high dirty spa`. */
  readonly id: string;
  readonly heater: string;
  readonly filter: FilterState;
}

export interface LoopStates {
  /** Basins that a suction or a return leads to, in the order of the job. */
  readonly basins: readonly string[];
  readonly all: readonly LoopState[];
  /** Those in which a heater may run. */
  readonly heating: readonly LoopState[];
  readonly heaters: readonly HeaterState[];
}

const kept = new WeakMap<JobView, LoopStates>();

/** The states of a job, found once: subjects and plant both ask for them. */
export function loopStates(view: JobView): LoopStates {
  const known = kept.get(view);
  if (known !== undefined) return known;
  const found = findStates(view);
  kept.set(view, found);
  return found;
}

function findStates(view: JobView): LoopStates {
  const basins = loopBasins(view);
  const all = speedsOf(view).flatMap((speed) =>
    basins.filter((basin) => serves(speed, basin)).map((basin) => ({ speed: speed.id, basin, ...speed })),
  );
  const hot = all.filter((state) => state.heating && heatersOf(view, state.basin).length > 0);
  const plain = ({ speed, basin }: LoopState): LoopState => ({ speed, basin });
  const heating = hot.map(plain);
  return { basins, all: all.map(plain), heating, heaters: heaterStates(view, heating, basins.length > 1) };
}

function heaterStates(view: JobView, heating: readonly LoopState[], valves: boolean): HeaterState[] {
  return plannedHeaters(view).flatMap((heater) =>
    heating
      .filter((state) => heatersOf(view, state.basin).includes(heater))
      .flatMap((state) =>
        FILTER_STATES.map((filter) => {
          const id = [heater, state.speed, filter, ...(valves ? [state.basin] : [])].join(' ');
          return { id, heater, ...state, filter };
        }),
      ),
  );
}

/** Heaters that warm a basin: those it names, else all. */
export function heatersOf(view: JobView, basin: string): readonly string[] {
  const named = idsIn(wordOf(view, { collection: 'basins', id: basin, field: 'heatedBy' }));
  const heaters = plannedHeaters(view);
  return named.length === 0 ? heaters : heaters.filter((id) => named.includes(id));
}

/** The basin at the end of a run: the one it names, else the only one there is. */
export function basinOfRun(view: JobView, id: string): string {
  const basins = view.all('basins');
  const only = basins.length === 1 ? (basins[0]?.id ?? '') : '';
  return wordOf(view, { collection: 'waterRuns', id, field: 'basin' }) || only;
}

function loopBasins(view: JobView): string[] {
  const reached = new Set<string>();
  for (const { id } of view.all('waterRuns')) {
    const role = wordOf(view, { collection: 'waterRuns', id, field: 'role' });
    if (role === 'suction' || role === 'return') reached.add(basinOfRun(view, id));
  }
  return view
    .all('basins')
    .map((record) => record.id)
    .filter((id) => reached.has(id));
}

interface Speed {
  readonly id: string;
  readonly heating: boolean;
  readonly named: readonly string[];
}

/** Until someone says that the heater is kept off at a speed, it may run there. */
function speedsOf(view: JobView): Speed[] {
  return view.all('pumpSpeeds').map(({ id }) => {
    const at = (field: string) => ({ collection: 'pumpSpeeds', id, field });
    const heating = wordOf(view, at('heating')) !== 'no';
    return { id, heating, named: idsIn(wordOf(view, at('basins'))) };
  });
}

function serves({ named }: Speed, basin: string): boolean {
  return named.length === 0 || named.includes(basin);
}

export function idsIn(text: string): readonly string[] {
  return text.split(/\s+/).filter((id) => id !== '');
}

interface Where {
  readonly collection: string;
  readonly id: string;
  readonly field: string;
}

export function wordOf(view: JobView, { collection, id, field }: Where): string {
  const { fact } = recordFacts(collection, view.record(collection, id)).at(field);
  return fact.state === 'word' ? fact.value : '';
}
