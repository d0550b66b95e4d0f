/**
 * The openings of the bypass that hold every heater inside its band in all the states asked for, or why none does.
 *
 * Opening the bypass takes flow from the heaters, in every network of this form. In each state the openings allowed
 * are therefore one interval: from the opening at which the busiest heater falls to its most, to the one at which the
 * poorest falls to its least. The answer is what the intervals of all states share.
 *
 * The limits are found by the flow through the bypass, in which heater flow is nearly straight, and turned into an
 * opening by the valve's curve at the very end.
 *
 * Source: the pad's solution. Range: a pad with heaters and a bypass.
 * Errors: `ill-formed` without a bypass; a state that cannot be solved is an issue.
 *
 * Worked example: full speed needs at least 0.2 open, low speed at most 0.5 → 0.2 to 0.5.
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import { falsePosition } from './false-position.ts';
import { openingOfFlow } from './opening-of-flow.ts';
import type { Pad } from './pad.ts';
import type { Bypass, PadState } from './spec.ts';

export interface StateOpenings {
  /** Place in the states given. */
  readonly state: number;
  /** Opening at which the busiest heater is at its most; 0 when it never has too much. */
  readonly low: number;
  /** Opening at which the poorest heater is at its least; 1 when it never has too little. */
  readonly high: number;
  /** `too-little`: under its least even with the bypass shut. `too-much`: over its most even fully open. */
  readonly trouble?: 'too-little' | 'too-much';
  /** Least and greatest heater flow with the bypass shut, m3/s. */
  readonly flowShut: readonly [number, number];
  /** The same fully open. */
  readonly flowOpen: readonly [number, number];
}

export type BypassFinding =
  | {
      readonly found: 'interval';
      readonly low: number;
      readonly high: number;
      /** States that set the two ends; −1 where nothing but the valve does. */
      readonly lowState: number;
      readonly highState: number;
      readonly states: readonly StateOpenings[];
    }
  | {
      readonly found: 'none';
      /** `conflict`: each state alone can be held, but these two not by one opening. */
      readonly reason: 'too-little' | 'too-much' | 'conflict';
      /** The state in trouble, or the two that conflict: first the one that needs more open. */
      readonly between: readonly number[];
      readonly states: readonly StateOpenings[];
    };

/** The opening interval that holds every heater inside its band in all states, or the finding that there is none. */
export function bypassOpening(pad: Pad, states: readonly PadState[]): Result<BypassFinding> {
  const { bypass } = pad.spec;
  if (bypass === undefined) return fail({ code: 'ill-formed', where: 'bypass', reason: 'no-bypass' });
  if (states.length === 0) return fail({ code: 'ill-formed', where: 'states', reason: 'no-state' });
  const each: StateOpenings[] = [];
  for (const [index, state] of states.entries()) {
    const one = openingsOf(pad, bypass, state, index);
    if (!one.ok) return one;
    each.push(one.value);
  }
  return ok(shared(each));
}

/** What the intervals of all states have in common. */
function shared(states: readonly StateOpenings[]): BypassFinding {
  const troubled = states.find((one) => one.trouble !== undefined);
  if (troubled?.trouble)
    return { found: 'none', reason: troubled.trouble, between: [troubled.state], states };
  const lowest = states.reduce((most, one) => (one.low > most.low ? one : most));
  const highest = states.reduce((least, one) => (one.high < least.high ? one : least));
  const [low, high] = [lowest.low, highest.high];
  if (low > high)
    return { found: 'none', reason: 'conflict', between: [lowest.state, highest.state], states };
  const lowState = low > 0 ? lowest.state : -1;
  const highState = high < 1 ? highest.state : -1;
  return { found: 'interval', low, high, lowState, highState, states };
}

function openingsOf(pad: Pad, bypass: Bypass, state: PadState, index: number): Result<StateOpenings> {
  const open = pad.solve({ ...state, bypass: 1 });
  if (!open.ok) return fail(...open.issues);
  const whenOpen = excesses(pad);
  const most = pad.network.flow(pad.bypassLink);
  const shut = pad.solveAtBypassFlow(state, 0);
  if (!shut.ok) return fail(...shut.issues);
  const whenShut = excesses(pad);
  const found = { state: index, flowShut: whenShut.flows, flowOpen: whenOpen.flows };
  if (whenShut.overLeast < 0) return ok({ ...found, low: 0, high: 0, trouble: 'too-little' });
  if (whenOpen.overMost > 0) return ok({ ...found, low: 1, high: 1, trouble: 'too-much' });
  const search = { pad, bypass, state, most, whenShut, whenOpen };
  const low = whenShut.overMost <= 0 ? ok(0) : openingWhere(search, 'overMost');
  const high = whenOpen.overLeast >= 0 ? ok(1) : openingWhere(search, 'overLeast');
  if (!low.ok) return low;
  return high.ok ? ok({ ...found, low: low.value, high: high.value }) : high;
}

interface Excess {
  /** Greatest of flow less most over the heaters, m3/s: at or under zero is well. */
  readonly overMost: number;
  /** Least of flow less least: at or over zero is well. */
  readonly overLeast: number;
  readonly flows: readonly [least: number, greatest: number];
}

function excesses(pad: Pad): Excess {
  const heaters = pad.spec.bank?.heaters ?? [];
  const flows = heaters.map((_, i) => pad.heaterFlow(i));
  return {
    overMost: Math.max(...heaters.map(({ band }, i) => (flows[i] as number) - band.most)),
    overLeast: Math.min(...heaters.map(({ band }, i) => (flows[i] as number) - band.least)),
    flows: [Math.min(...flows), Math.max(...flows)],
  };
}

interface Search {
  readonly pad: Pad;
  readonly bypass: Bypass;
  readonly state: PadState;
  /** Flow of the bypass fully open, m3/s. */
  readonly most: number;
  readonly whenShut: Excess;
  readonly whenOpen: Excess;
}

/** Part of the heater's flow to which a limit is found. */
const FINE = 1e-6;

/** The opening at which an excess is zero: first the flow through the bypass, then the valve that passes it. */
function openingWhere(search: Search, limit: 'overMost' | 'overLeast'): Result<number> {
  const { pad, bypass, state, most, whenShut, whenOpen } = search;
  const at = (flow: number): number =>
    pad.solveAtBypassFlow(state, flow).ok ? excesses(pad)[limit] : Number.NaN;
  const ends = { low: 0, atLow: whenShut[limit], high: most, atHigh: whenOpen[limit] };
  const flow = falsePosition(at, { ...ends, small: FINE * whenShut.flows[1] });
  return flow.ok ? ok(openingOfFlow(pad, bypass, flow.value)) : flow;
}
