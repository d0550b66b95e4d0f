/**
 * How the flows of a bank of heaters stand against the bands of its heaters: which heater passes a limit by most, and
 * which state is the harder one on it.
 */
import type { FlowBand, PadState } from './spec.ts';

/** A heater in a state, by their places. */
export interface HeaterInState {
  readonly state: number;
  readonly heater: number;
}

/** What a state shows with its own bypass opening. */
export interface BankFlows {
  /** Of each heater, m3/s. */
  readonly heaters: readonly number[];
  /** Through the pump, m3/s. */
  readonly total: number;
  /** Through the bypass, m3/s. */
  readonly bypass?: number;
}

/** How far one limit of the bank is passed, m3/s, and by which heater. */
export interface Excess {
  readonly state: number;
  readonly by: number;
  readonly heater: number;
}

export type Limit = 'most' | 'least';

export interface Judged {
  readonly state: number;
  readonly limit: Limit;
  readonly flow: (heater: number) => number;
}

/** The flow that is farthest over `most`, or farthest under `least`, and of which heater; flows and bands in m3/s. */
export function worst(bands: readonly FlowBand[], { state, limit, flow }: Judged): Excess {
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
export function isHarder(other: PadState, one: PadState, limit: Limit): boolean {
  const alike =
    other.speed === one.speed &&
    other.from === one.from &&
    other.to === one.to &&
    other.temperature === one.temperature &&
    other.wear === one.wear;
  const more = (other.loading ?? 1) - (one.loading ?? 1);
  return alike && (limit === 'most' ? more < 0 : more > 0);
}
