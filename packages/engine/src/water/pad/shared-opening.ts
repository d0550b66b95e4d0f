/**
 * The opening of the bypass that suits all states at once: only the interval they share, for whoever asks often.
 *
 * The same answer as `bypassOpening`, without the openings each state would bear alone. States that others are harder
 * than are left out; a limit that is found for one state is tried in the next, and looked for again only where it does
 * not hold there: two solves a state at most, and a search only for the few that narrow the interval.
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

/** What a state shows with its own bypass opening. */
export interface BankFlows {
  /** Of each heater, m3/s. */
  readonly heaters: readonly number[];
  /** Through the pump, m3/s. */
  readonly total: number;
  /** Through the bypass, m3/s. */
  readonly bypass?: number;
}

export interface OpeningAsked {
  readonly states: readonly PadState[];
  /** One for each heater of the bank. */
  readonly bands: readonly FlowBand[];
  /** One for each state, where they have been solved already: spares most of the solves. */
  readonly standing?: readonly BankFlows[];
}

/** The opening interval that holds every heater inside its band in all states, or why there is none. */
export function sharedOpening(pad: Pad, asked: OpeningAsked): Result<SharedOpening> {
  const { bypass } = pad.spec;
  const { states, bands, standing } = asked;
  if (bypass === undefined) return fail({ code: 'ill-formed', where: 'bypass', reason: 'no-bypass' });
  if (states.length === 0) return fail({ code: 'ill-formed', where: 'states', reason: 'no-state' });
  if (bands.length !== (pad.spec.bank?.heaters.length ?? 0) || bands.length === 0)
    return fail({ code: 'ill-formed', where: 'bands', reason: 'no-heater' });
  return new Search({ pad, bypass, states, bands, standing }).run();
}

/** How far one limit of the bank is passed, m3/s, and by which heater. */
interface Excess {
  readonly state: number;
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
  readonly standing: readonly BankFlows[] | undefined;
}

class Search {
  readonly #pad: Pad;
  readonly #bypass: Bypass;
  readonly #states: readonly PadState[];
  readonly #bands: readonly FlowBand[];
  readonly #standing: readonly BankFlows[] | undefined;

  constructor({ pad, bypass, states, bands, standing }: Question) {
    this.#pad = pad;
    this.#bypass = bypass;
    this.#states = states;
    this.#bands = bands;
    this.#standing = standing;
  }

  run(): Result<SharedOpening> {
    const least = this.#near('least');
    if (!least.ok) return least;
    const starved = least.value.find((one) => one.by < 0);
    if (starved !== undefined) return ok(none('too-little', starved));
    const most = this.#near('most');
    if (!most.ok) return most;
    const low = this.#lowEnd(most.value);
    if (!low.ok) return low;
    if (low.value.opening > 1) return ok(none('too-much', low.value.set as HeaterInState));
    const high = this.#highEnd(least.value);
    if (!high.ok) return high;
    return ok(joined(low.value, high.value));
  }

  /**
   * What each state that could set a limit has against it with the bypass shut, the worst first. Where its standing
   * already tells that it keeps the limit, the standing is taken: a heater that has its least with the bypass as it
   * stands has it with the bypass shut, and none can get more than the pump gives.
   */
  #near(limit: Limit): Result<readonly Excess[]> {
    const found: Excess[] = [];
    for (const [state, one] of this.#states.entries()) {
      if (this.#states.some((other) => isHarder(other, one, limit))) continue;
      const kept = this.#kept(state, limit);
      if (kept === undefined) {
        const shut = this.#pad.solveAtBypassFlow(one, 0);
        if (!shut.ok) return fail(...shut.issues);
      }
      found.push(kept ?? this.#excess(state, limit));
    }
    return ok(found.sort((a, b) => (limit === 'most' ? b.by - a.by : a.by - b.by)));
  }

  #kept(state: number, limit: Limit): Excess | undefined {
    const standing = this.#standing?.[state];
    if (standing === undefined) return undefined;
    const { heaters, total } = standing;
    const flow = (heater: number): number => (limit === 'most' ? total : (heaters[heater] ?? Number.NaN));
    const excess = worst(this.#bands, { state, limit, flow });
    const isKept = limit === 'most' ? excess.by <= 0 : excess.by >= 0;
    return isKept ? excess : undefined;
  }

  /** The largest opening that any state needs; above 1 where even a valve fully open is not enough. */
  #lowEnd(near: readonly Excess[]): Result<End> {
    let end: End = { opening: 0, set: undefined };
    for (const atShut of near) {
      if (atShut.by <= 0) break;
      const now = this.#atOpening(atShut.state, end.opening, 'most');
      if (!now.ok) return now;
      if (end.opening > 0 && now.value.by <= 0) continue;
      const open = this.#atOpening(atShut.state, 1, 'most');
      if (!open.ok) return open;
      if (open.value.by > 0) return ok({ opening: Number.POSITIVE_INFINITY, set: open.value });
      const found = this.#opening('most', { atShut, atOpen: open.value });
      if (!found.ok) return found;
      end = found.value;
    }
    return ok(end);
  }

  /** The smallest opening that any state bears; 1 where all bear a valve fully open. */
  #highEnd(near: readonly Excess[]): Result<End> {
    let end: End = { opening: 1, set: undefined };
    for (const { state } of near) {
      const now = this.#atOpening(state, end.opening, 'least');
      if (!now.ok) return now;
      if (now.value.by >= 0) continue;
      const found = this.#fromOpen(now.value);
      if (!found.ok) return found;
      end = found.value;
    }
    return ok(end);
  }

  /** From a bypass that is too far open, as the pad stands now, back to where the least is just kept. */
  #fromOpen(atOpen: Excess): Result<End> {
    const { state } = atOpen;
    const most = this.#pad.network.flow(this.#pad.bypassLink);
    const standing = this.#standing?.[state]?.bypass ?? 0;
    const kept = standing > 0 && standing < most ? this.#kept(state, 'least') : undefined;
    if (kept !== undefined && kept.by > this.#small(kept))
      return this.#between('least', { nearer: kept, least: standing, atOpen, most });
    const shut = this.#pad.solveAtBypassFlow(this.#states[state] as PadState, 0);
    if (!shut.ok) return fail(...shut.issues);
    return this.#between('least', { nearer: this.#excess(state, 'least'), least: 0, atOpen, most });
  }

  /** What counts as no excess, m3/s. */
  #small({ heater }: Excess): number {
    return FINE * (this.#bands[heater] as FlowBand).most;
  }

  #atOpening(state: number, opening: number, limit: Limit): Result<Excess> {
    const report = this.#pad.solve({ ...(this.#states[state] as PadState), bypass: opening });
    return report.ok ? ok(this.#excess(state, limit)) : fail(...report.issues);
  }

  /** Where a limit is just kept: between shut and the opening at which the pad stands now. */
  #opening(limit: Limit, ends: { readonly atShut: Excess; readonly atOpen: Excess }): Result<End> {
    const most = this.#pad.network.flow(this.#pad.bypassLink);
    return this.#between(limit, { nearer: ends.atShut, least: 0, atOpen: ends.atOpen, most });
  }

  /** By the flow through the bypass. */
  #between(limit: Limit, { nearer, least, atOpen, most }: Ends): Result<End> {
    const pad = this.#pad;
    const { state } = nearer;
    let set = nearer;
    const excess = (flow: number): number => {
      if (!pad.solveAtBypassFlow(this.#states[state] as PadState, flow).ok) return Number.NaN;
      set = this.#excess(state, limit);
      return set.by;
    };
    const small = this.#small(nearer);
    if (Math.abs(nearer.by) <= small) return ok({ opening: 0, set });
    const ends = { low: least, atLow: nearer.by, high: most, atHigh: atOpen.by, small };
    const flow = falsePosition(excess, ends);
    if (!flow.ok) return flow;
    return ok({ opening: openingOfFlow(pad, this.#bypass, flow.value), set });
  }

  /** Flow over the most of the busiest heater, or over the least of the poorest, as the pad stands now. */
  #excess(state: number, limit: Limit): Excess {
    return worst(this.#bands, { state, limit, flow: (heater) => this.#pad.heaterFlow(heater) });
  }
}

interface Ends {
  /** With the bypass shut, or as it stands where that keeps the limit. */
  readonly nearer: Excess;
  /** Flow through the bypass then, m3/s. */
  readonly least: number;
  readonly atOpen: Excess;
  /** Flow through the bypass at the open end, m3/s. */
  readonly most: number;
}

interface Judged {
  readonly state: number;
  readonly limit: Limit;
  readonly flow: (heater: number) => number;
}

function worst(bands: readonly FlowBand[], { state, limit, flow }: Judged): Excess {
  let found: Excess | undefined;
  for (const [heater, band] of bands.entries()) {
    const by = flow(heater) - band[limit];
    const isWorse = found === undefined || (limit === 'most' ? by > found.by : by < found.by);
    if (isWorse) found = { state, by, heater };
  }
  return found ?? { state, by: 0, heater: 0 };
}

/**
 * Whether another state is harder on a limit whatever the bypass: alike but for the filter, which takes flow from all
 * that lies behind it.
 */
function isHarder(other: PadState, one: PadState, limit: Limit): boolean {
  const alike =
    other.speed === one.speed &&
    other.from === one.from &&
    other.to === one.to &&
    other.temperature === one.temperature &&
    other.wear === one.wear;
  const more = (other.loading ?? 1) - (one.loading ?? 1);
  return alike && (limit === 'most' ? more < 0 : more > 0);
}

interface End {
  readonly opening: number;
  readonly set: HeaterInState | undefined;
}

function none(reason: 'too-little' | 'too-much', { state, heater }: HeaterInState): SharedOpening {
  return { found: 'none', reason, between: [{ state, heater }] };
}

function joined(low: End, high: End): SharedOpening {
  if (low.opening > high.opening) {
    const between = [low.set, high.set].filter((one) => one !== undefined).map(placeOf);
    return { found: 'none', reason: 'conflict', between };
  }
  return {
    found: 'interval',
    low: low.opening,
    high: high.opening,
    ...(low.set === undefined ? {} : { lowBy: placeOf(low.set) }),
    ...(high.set === undefined ? {} : { highBy: placeOf(high.set) }),
  };
}

function placeOf({ state, heater }: HeaterInState): HeaterInState {
  return { state, heater };
}
