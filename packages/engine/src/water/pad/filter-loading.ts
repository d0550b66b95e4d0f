/**
 * How dirty a filter is, judged at the speed of its clean figure.
 *
 * A filter is cleaned when its gauge shows so much over the clean figure. The rise falls with the square of the flow:
 * at half speed a filter that is due shows a quarter of the rise, and looks clean. A reading at one speed is therefore
 * turned into a resistance, and the resistance into the rise it would show at the speed of the clean figure.
 *
 * The gauge stands before the filter and feels the returns as well as the dirt: as the filter clogs, flow and return
 * losses fall, so that the loss across the filter rises by more than the gauge does.
 *
 * How sources disagree: dirt is taken to multiply the filter's clean loss at every flow. A cake of fine dirt resists
 * more like the first power of flow, so that a reading at low speed overrates the rise at high speed for it.
 *
 * Source: the pad's solution; Wyoming 010-4 Section 4-9 and the trade for the rises allowed.
 * Range: resistances from a tenth of clean to ten thousand times. Errors: `no-solution` with reason
 * `pump-cannot-make-rise` when no amount of dirt shows the rise, `contradiction` with reason `cleaner-than-clean`.
 *
 * Worked example: 10 psi over clean at full speed → about 2.5 psi at half speed by the square of the flow.
 */
import { brentRoot } from '../../numerics/index.ts';
import { fail, ok, type Result } from '../../trace/index.ts';
import { type CleanPad, gaugeLoading } from './gauge-loading.ts';
import type { Pad } from './pad.ts';
import { type PadSolution, solvePad } from './solution.ts';
import type { PadState } from './spec.ts';

/** What the allowed soil is measured by: the gauge's rise over clean, or the loss from inlet to outlet. */
export type FilterMeasure = 'rise-over-clean' | 'inlet-to-outlet';

export interface FilterLimit {
  /** The state of the clean figure: its speed and valves. Its loading counts as clean. */
  readonly clean: PadState;
  readonly measure: FilterMeasure;
  /** Pa. */
  readonly pressure: number;
  /** The pad solved in that state, where it has been already. */
  readonly solved?: PadSolution;
}

const LEAST_LOADING = 0.1;
const MOST_LOADING = 1e4;

/** Loading (resistance over clean) at which the filter reaches its limit in the state of its clean figure. */
export function dirtyLoading(pad: Pad, limit: FilterLimit): Result<number> {
  const clean = limit.solved ? ok(limit.solved) : solvePad(pad, { ...limit.clean, loading: 1 });
  if (!clean.ok) return clean;
  const target = limit.pressure + (limit.measure === 'rise-over-clean' ? clean.value.filterInletPressure : 0);
  const shown = (one: PadSolution): number =>
    limit.measure === 'rise-over-clean'
      ? one.filterInletPressure
      : one.filterInletPressure - one.filterOutletPressure;
  if (shown(clean.value) >= target) return ok(1);
  const quick =
    limit.measure === 'rise-over-clean'
      ? gaugeLoading(pad, {
          state: limit.clean,
          pressure: target,
          least: 1,
          most: MOST_LOADING,
          clean: { ...clean.value, speed: limit.clean.speed },
        })
      : undefined;
  if (quick !== undefined) return ok(quick);
  const found = loadingWhere(pad, limit.clean, (one) => shown(one) - target, 1);
  if (found.ok) return found;
  return fail({
    code: 'no-solution',
    where: 'filter',
    found: limit.pressure,
    kind: 'pressure-difference',
    reason: 'pump-cannot-make-rise',
  });
}

export interface FilterReading {
  /** The state in which the gauge was read; its loading counts for nothing. */
  readonly state: PadState;
  /** Gauge pressure before the filter, Pa. */
  readonly pressure: number;
  /** The pad with a clean filter and the same valves, at any speed, where it has been solved already. */
  readonly clean?: CleanPad;
}

/** Loading that a gauge reading shows. */
export function loadingOfReading(pad: Pad, reading: FilterReading): Result<number> {
  const bounds = { least: LEAST_LOADING, most: MOST_LOADING };
  const quick = gaugeLoading(pad, { ...reading, ...bounds });
  if (quick !== undefined) return ok(quick);
  const found = loadingWhere(
    pad,
    reading.state,
    (one) => one.filterInletPressure - reading.pressure,
    LEAST_LOADING,
  );
  if (found.ok) return found;
  const clean = solvePad(pad, { ...reading.state, loading: LEAST_LOADING });
  if (!clean.ok) return clean;
  const under = reading.pressure < clean.value.filterInletPressure;
  const reason = under ? 'cleaner-than-clean' : 'pump-cannot-make-rise';
  return fail({ code: 'contradiction', where: 'filter', found: reading.pressure, kind: 'pressure', reason });
}

export interface FilterVerdict {
  /** Resistance over clean. */
  readonly loading: number;
  /** Rise over the clean figure that this loading shows at its speed, Pa. */
  readonly rise: number;
  /** Gauge pressure it shows then, Pa. */
  readonly pressure: number;
}

/** What a reading at any speed means at the speed of the clean figure. */
export function filterVerdict(pad: Pad, reading: FilterReading, clean: PadState): Result<FilterVerdict> {
  const loading = loadingOfReading(pad, reading);
  if (!loading.ok) return loading;
  const before = solvePad(pad, { ...clean, loading: 1 });
  if (!before.ok) return before;
  const after = solvePad(pad, { ...clean, loading: loading.value });
  if (!after.ok) return after;
  const pressure = after.value.filterInletPressure;
  return ok({ loading: loading.value, pressure, rise: pressure - before.value.filterInletPressure });
}

/** Root in the logarithm of the loading, along which gauge pressures are gentle curves. */
function loadingWhere(
  pad: Pad,
  state: PadState,
  excess: (one: PadSolution) => number,
  least: number,
): Result<number> {
  const at = (exponent: number): number => {
    const one = solvePad(pad, { ...state, loading: Math.exp(exponent) });
    return one.ok ? excess(one.value) : Number.NaN;
  };
  const found = brentRoot(at, { low: Math.log(least), high: Math.log(MOST_LOADING) }, { tolerance: 1e-9 });
  return found.ok ? ok(Math.exp(found.value)) : found;
}
