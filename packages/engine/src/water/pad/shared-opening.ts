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
import type { BankFlows, HeaterInState } from './bank-excess.ts';
import { type End, OpeningSearch } from './opening-search.ts';
import type { Pad } from './pad.ts';
import type { FlowBand, PadState } from './spec.ts';

export type { BankFlows, HeaterInState } from './bank-excess.ts';

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
  return answered(new OpeningSearch({ pad, bypass, states, bands, standing }));
}

function answered(search: OpeningSearch): Result<SharedOpening> {
  const least = search.near('least');
  if (!least.ok) return least;
  const starved = least.value.find((one) => one.by < 0);
  if (starved !== undefined) return ok(none('too-little', starved));
  const most = search.near('most');
  if (!most.ok) return most;
  const low = search.lowEnd(most.value);
  if (!low.ok) return low;
  if (low.value.opening > 1) return ok(none('too-much', low.value.set as HeaterInState));
  const high = search.highEnd(least.value);
  if (!high.ok) return high;
  return ok(joined(low.value, high.value));
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
