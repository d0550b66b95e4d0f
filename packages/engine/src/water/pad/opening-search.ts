/**
 * The two ends of the openings that a bank bears: from what each state has against a limit with the bypass shut, to the
 * opening at which that limit is just kept.
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import {
  type BankFlows,
  type Excess,
  type HeaterInState,
  isHarder,
  type Limit,
  worst,
} from './bank-excess.ts';
import { falsePosition } from './false-position.ts';
import { openingOfFlow } from './opening-of-flow.ts';
import type { Pad } from './pad.ts';
import type { Bypass, FlowBand, PadState } from './spec.ts';

/** Part of the heater's flow to which a limit is found. */
const FINE = 1e-6;

export interface Question {
  readonly pad: Pad;
  readonly bypass: Bypass;
  readonly states: readonly PadState[];
  readonly bands: readonly FlowBand[];
  readonly standing: readonly BankFlows[] | undefined;
}

/** An end of the interval, and what sets it. */
export interface End {
  readonly opening: number;
  readonly set: HeaterInState | undefined;
}

/** Looks for the ends on one pad, which it leaves solved at the last opening it tried. */
export class OpeningSearch {
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

  /**
   * What each state that could set a limit has against it with the bypass shut, the worst first. Where its standing
   * already tells that it keeps the limit, the standing is taken: a heater that has its least with the bypass as it
   * stands has it with the bypass shut, and none can get more than the pump gives.
   */
  near(limit: Limit): Result<readonly Excess[]> {
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
  lowEnd(near: readonly Excess[]): Result<End> {
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
  highEnd(near: readonly Excess[]): Result<End> {
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
