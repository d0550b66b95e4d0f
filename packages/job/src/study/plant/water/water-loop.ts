/**
 * The loop laid out for given values, and solved in one state after another. A pad is laid out once for one set of
 * values and every solution kept, so that all that is asked of it costs one solve a state.
 */
import { fail, type Issue, ok, type Result, water } from '@firstfire/engine';
import { type Key, keyOfParts } from '../../facts/key.ts';
import { type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Parameter, Values } from '../model.ts';
import { BYPASS_OPENING } from './equipment.ts';
import type { FilterState, LoopState } from './loop-states.ts';
import { readingOf } from './reading-of.ts';
import type { WaterPlan } from './water-plan.ts';

export interface StateAsked extends LoopState {
  readonly filter: FilterState;
}

export class WaterLoop {
  readonly plan: WaterPlan;
  readonly #readings: readonly ReadingPath[];
  readonly #own: readonly number[];
  readonly #kept = new Map<string, Result<LoopAt>>();

  constructor(plan: WaterPlan, parameters: readonly Parameter[]) {
    this.plan = plan;
    this.#readings = parameters.map((one) => one.reading);
    this.#own = parameters.map((one) => one.value);
  }

  /** The loop with these values; the same ones give the same loop, with its solutions. */
  at(values: Values): Result<LoopAt> {
    const key = this.#difference(values);
    const kept = this.#kept.get(key);
    if (kept !== undefined) return kept;
    const built = this.#build(values);
    this.#kept.set(key, built);
    return built;
  }

  /** How the values differ from those of the job: usually in one reading, or none. */
  #difference(values: Values): string {
    let key = '';
    for (const [i, reading] of this.#readings.entries()) {
      const value = values(reading);
      if (value !== this.#own[i]) key += `${i}:${value} `;
    }
    return key;
  }

  #build(values: Values): Result<LoopAt> {
    const spec = this.plan.spec?.(values);
    if (spec === undefined) return fail();
    const pad = water.buildPad(spec);
    if (!pad.ok) return fail(...pad.issues.map((issue) => readingOf(this.plan, issue)));
    return ok(new LoopAt(this.plan, pad.value));
  }
}

interface Solved {
  readonly any: Result<water.PadSolution>;
  readonly sound: Result<water.PadSolution>;
}

/** A loop laid out. */
export class LoopAt {
  readonly plan: WaterPlan;
  readonly pad: water.Pad;
  readonly #solutions = new Map<string, Result<water.PadSolution>>();
  readonly #loadings = new Map<string, Result<number>>();
  /** What was asked for with the last set of values, by state: values never change. */
  #values: Values | undefined;
  #asked = new Map<Key, Solved>();
  readonly #dirt: Key;

  constructor(plan: WaterPlan, pad: water.Pad) {
    this.plan = plan;
    this.pad = pad;
    this.#dirt = readingPath('filters', plan.filter, 'dirtyRise');
  }

  /** The pad's state; the bypass stands where its handle does. */
  state(asked: StateAsked, values: Values): Result<water.PadState> {
    const loading = asked.filter === 'clean' ? ok(1) : this.dirtyLoading(values);
    if (!loading.ok) return loading;
    const speed = this.speedRatio(readingPath('pumpSpeeds', asked.speed, 'speed'), values);
    const bypass = this.plan.bypass ? values(BYPASS_OPENING) : 0;
    return ok({ speed, loading: loading.value, bypass, ...this.plan.position(asked.basin) });
  }

  /** The pad solved in a state; water that would boil somewhere is an issue. */
  solve(asked: StateAsked, values: Values): Result<water.PadSolution> {
    return this.#solved(asked, values).sound;
  }

  /** The same, whether or not the water would boil. */
  solveAnyhow(asked: StateAsked, values: Values): Result<water.PadSolution> {
    return this.#solved(asked, values).any;
  }

  #solved(asked: StateAsked, values: Values): Solved {
    if (this.#values !== values) {
      this.#values = values;
      this.#asked = new Map();
    }
    const key = keyOfParts(asked.speed, asked.filter, asked.basin);
    const kept = this.#asked.get(key);
    if (kept !== undefined) return kept;
    const any = this.#solve(asked, values);
    const boils = any.ok && any.value.issues.length > 0 ? any.value.issues : [];
    const solved = { any, sound: boils.length > 0 ? fail(...this.#named(boils)) : any };
    this.#asked.set(key, solved);
    return solved;
  }

  #solve(asked: StateAsked, values: Values): Result<water.PadSolution> {
    const state = this.state(asked, values);
    if (!state.ok) return state;
    return this.#solveState(asked.basin, state.value);
  }

  #solveState(basin: string, state: water.PadState): Result<water.PadSolution> {
    const { speed, loading = 1, bypass = 0 } = state;
    const key = `${basin} ${speed} ${loading} ${bypass}`;
    const kept = this.#solutions.get(key);
    if (kept !== undefined) return kept;
    const solved = water.solvePad(this.pad, state);
    const solution = solved.ok ? solved : fail(...this.#named(solved.issues));
    this.#solutions.set(key, solution);
    return solution;
  }

  /** Resistance over clean of a filter that is due: it shows the rise allowed at the speed of its clean figure. */
  dirtyLoading(values: Values): Result<number> {
    const pressure = values(this.#dirt);
    const clean = this.cleanState(values);
    const key = `${pressure} ${clean.speed}`;
    const kept = this.#loadings.get(key);
    if (kept !== undefined) return kept;
    const loading = this.#dirtyLoading(clean, pressure, values);
    this.#loadings.set(key, loading);
    return loading;
  }

  #dirtyLoading(clean: water.PadState, pressure: number, values: Values): Result<number> {
    const solved = this.solveClean(values);
    if (!solved.ok) return solved;
    const limit = { clean, measure: 'rise-over-clean', pressure, solved: solved.value } as const;
    const found = water.dirtyLoading(this.pad, limit);
    return found.ok ? found : fail(...this.#named(found.issues));
  }

  /** The pad as drawn, in the state of the clean figure. */
  solveClean(values: Values): Result<water.PadSolution> {
    return this.#solveState(this.plan.states.basins[0] ?? '', this.cleanState(values));
  }

  /** The state of the clean figure: the first basin, the bypass shut. */
  cleanState(values: Values): water.PadState {
    const { filter, position, states } = this.plan;
    const speed = this.speedRatio(readingPath('filters', filter, 'cleanSpeed'), values);
    return { speed, bypass: 0, ...position(states.basins[0] ?? '') };
  }

  /** A motor speed over the one the pump's curve is for. */
  speedRatio(reading: ReadingPath, values: Values): number {
    return values(reading) / values(readingPath('pumps', this.plan.pump, 'speedFull'));
  }

  #named(issues: readonly Issue[]): Issue[] {
    return issues.map((issue) => readingOf(this.plan, issue));
  }
}
