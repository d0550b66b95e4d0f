/**
 * The opening of the bypass that suits all states at once: only the interval they share, for whoever asks often.
 *
 * The same answer as `bypassOpening`, without the openings each state would bear alone. A limit that is found for one
 * state is tried in the next, and looked for again only where it does not hold there: two solves a state, and a search
 * only for the few that narrow the interval.
 *
 * Source: the pad's solution. Range: a pad with heaters and a bypass; a band for each heater of the bank.
 * Errors: `ill-formed` without a bypass, without a state, or where bands and heaters do not match; a state that
 * cannot be solved is an issue.
 *
 * Worked example: full speed needs at least 0.2 open, low speed at most 0.5 → 0.2 to 0.5.
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import { falsePosition } from './false-position.ts';
import { openingOfFlow } from './opening-of-flow.ts';
import type { Pad } from './pad.ts';
import type { Bypass, FlowBand, PadState } from './spec.ts';

/** A heater in a state, by their places. */
export interface HeaterInState {
  readonly state: number;
  readonly heater: number;
}

export type SharedOpening =
  | {
      readonly found: 'interval';
      readonly low: number;
      readonly high: number;
      /** What sets the two ends; absent where nothing but the valve's own stop does. */
      readonly lowBy?: HeaterInState;
      readonly highBy?: HeaterInState;
    }
  | {
      readonly found: 'none';
      /** `conflict`: each state alone can be held, but these two not by one opening. */
      readonly reason: 'too-little' | 'too-much' | 'conflict';
      /** What is in trouble, or the two that conflict: first the one that needs more open. */
      readonly between: readonly HeaterInState[];
    };

/** The opening interval that holds every heater inside its band in all states, or why there is none. */
export function sharedOpening(
  pad: Pad,
  states: readonly PadState[],
  bands: readonly FlowBand[],
): Result<SharedOpening> {
  const { bypass } = pad.spec;
  if (bypass === undefined) return fail({ code: 'ill-formed', where: 'bypass', reason: 'no-bypass' });
  if (states.length === 0) return fail({ code: 'ill-formed', where: 'states', reason: 'no-state' });
  if (bands.length !== (pad.spec.bank?.heaters.length ?? 0) || bands.length === 0)
    return fail({ code: 'ill-formed', where: 'bands', reason: 'no-heater' });
  return new Search({ pad, bypass, states, bands }).run();
}

/** How far one limit of the bank is passed, m3/s, and by which heater. */
interface Excess {
  readonly by: number;
  readonly heater: number;
}

type Limit = 'most' | 'least';

/** Part of the heater's flow to which a limit is found. */
const FINE = 1e-6;

interface Question {
  readonly pad: Pad;
  readonly bypass: Bypass;
  readonly states: readonly PadState[];
  readonly bands: readonly FlowBand[];
}

class Search {
  readonly #pad: Pad;
  readonly #bypass: Bypass;
  readonly #states: readonly PadState[];
  readonly #bands: readonly FlowBand[];

  constructor({ pad, bypass, states, bands }: Question) {
    this.#pad = pad;
    this.#bypass = bypass;
    this.#states = states;
    this.#bands = bands;
  }

  run(): Result<SharedOpening> {
    const most: Excess[] = [];
    const least: Excess[] = [];
    for (const state of this.#states) {
      const shut = this.#pad.solveAtBypassFlow(state, 0);
      if (!shut.ok) return fail(...shut.issues);
      most.push(this.#excess('most'));
      least.push(this.#excess('least'));
    }
    const starved = least.findIndex((one) => one.by < 0);
    if (starved >= 0) return ok(none('too-little', inState(starved, least)));
    const low = this.#lowEnd(most);
    if (!low.ok) return low;
    if (low.value.opening > 1) return ok(none('too-much', low.value.set as HeaterInState));
    const high = this.#highEnd(least);
    if (!high.ok) return high;
    return ok(joined(low.value, high.value));
  }

  /** The largest opening that any state needs; above 1 where even a valve fully open is not enough. */
  #lowEnd(shut: readonly Excess[]): Result<End> {
    let end: End = { opening: 0, set: undefined };
    for (const state of order(shut, (a, b) => b.by - a.by)) {
      const atShut = shut[state] as Excess;
      if (atShut.by <= 0) break;
      const now = this.#atOpening(state, end.opening, 'most');
      if (!now.ok) return now;
      if (end.opening > 0 && now.value.by <= 0) continue;
      const open = this.#atOpening(state, 1, 'most');
      if (!open.ok) return open;
      if (open.value.by > 0)
        return ok({ opening: Number.POSITIVE_INFINITY, set: { state, heater: open.value.heater } });
      const found = this.#opening(state, 'most', { atShut, atOpen: open.value });
      if (!found.ok) return found;
      end = found.value;
    }
    return ok(end);
  }

  /** The smallest opening that any state bears; 1 where all bear a valve fully open. */
  #highEnd(shut: readonly Excess[]): Result<End> {
    let end: End = { opening: 1, set: undefined };
    for (const state of order(shut, (a, b) => a.by - b.by)) {
      const now = this.#atOpening(state, end.opening, 'least');
      if (!now.ok) return now;
      if (now.value.by >= 0) continue;
      const found = this.#opening(state, 'least', { atShut: shut[state] as Excess, atOpen: now.value });
      if (!found.ok) return found;
      end = found.value;
    }
    return ok(end);
  }

  #atOpening(state: number, opening: number, limit: Limit): Result<Excess> {
    const report = this.#pad.solve({ ...(this.#states[state] as PadState), bypass: opening });
    return report.ok ? ok(this.#excess(limit)) : fail(...report.issues);
  }

  /** Where a limit is just kept: between shut and the opening at which the pad stands now. */
  #opening(
    state: number,
    limit: Limit,
    { atShut, atOpen }: { readonly atShut: Excess; readonly atOpen: Excess },
  ): Result<End> {
    const pad = this.#pad;
    const most = pad.network.flow(pad.bypassLink);
    let heater = atShut.heater;
    const excess = (flow: number): number => {
      if (!pad.solveAtBypassFlow(this.#states[state] as PadState, flow).ok) return Number.NaN;
      const now = this.#excess(limit);
      heater = now.heater;
      return now.by;
    };
    const small = FINE * (this.#bands[atShut.heater] as FlowBand).most;
    if (Math.abs(atShut.by) <= small) return ok({ opening: 0, set: { state, heater } });
    const ends = { low: 0, atLow: atShut.by, high: most, atHigh: atOpen.by };
    const flow = falsePosition(excess, { ...ends, small });
    if (!flow.ok) return flow;
    return ok({ opening: openingOfFlow(pad, this.#bypass, flow.value), set: { state, heater } });
  }

  /** Flow over the most of the busiest heater, or over the least of the poorest. */
  #excess(limit: Limit): Excess {
    let worst: Excess = {
      by: limit === 'most' ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY,
      heater: 0,
    };
    for (const [heater, band] of this.#bands.entries()) {
      const by = this.#pad.heaterFlow(heater) - band[limit];
      if (limit === 'most' ? by > worst.by : by < worst.by) worst = { by, heater };
    }
    return worst;
  }
}

interface End {
  readonly opening: number;
  readonly set: HeaterInState | undefined;
}

/** Places of the states, in the order of what they exceed by. */
function order(excesses: readonly Excess[], by: (a: Excess, b: Excess) => number): number[] {
  return excesses.map((_, i) => i).sort((a, b) => by(excesses[a] as Excess, excesses[b] as Excess));
}

function inState(state: number, excesses: readonly Excess[]): HeaterInState {
  return { state, heater: excesses[state]?.heater ?? 0 };
}

function none(reason: 'too-little' | 'too-much', where: HeaterInState): SharedOpening {
  return { found: 'none', reason, between: [where] };
}

function joined(low: End, high: End): SharedOpening {
  if (low.opening > high.opening) {
    const between = [low.set, high.set].filter((one) => one !== undefined);
    return { found: 'none', reason: 'conflict', between };
  }
  return {
    found: 'interval',
    low: low.opening,
    high: high.opening,
    ...(low.set === undefined ? {} : { lowBy: low.set }),
    ...(high.set === undefined ? {} : { highBy: high.set }),
  };
}
