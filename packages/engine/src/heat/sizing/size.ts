/**
 * The output a heater needs, and the case that asks for it.
 *
 * Each basin may ask for two things: to be held through its hardest month, and to be warmed in a time. One heater for
 * two basins meets them one at a time or at once:
 *
 *     hold          mean of the month, or of its hardest day, of every basin together
 *     warm up       each basin's own; while the other is held where both are served at once
 *
 * A pool valve that sends all the water to one basin is *one at a time*: the spa is warmed while the pool waits, but
 * the pool must still be held by what the day leaves, which is why holding is always counted together.
 *
 * Source: first law; `holdOutput` and `outputToWarmUp`.
 * Range: one or two basins, as a pool year and a warm-up.
 * Errors: those of the parts, with the basin's number before them.
 *
 * Worked example: see the test, a pool with a spa.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import type { HourlyWeather } from '../climate/index.ts';
import type { YearBasin } from '../year/index.ts';
import { holdOutput } from './hold.ts';
import { outputToWarmUp, type WarmUpWish } from './warm-up-output.ts';

export interface BasinDemand {
  readonly basin: Omit<YearBasin, 'setPoint'>;
  /** Wanted temperature, K. */
  readonly temperature: number;
  /** Month (1 to 12) through which it must be held; none where absent. */
  readonly holdMonth?: number;
  /** Warm-up wanted; none where absent. */
  readonly warmUp?: Omit<WarmUpWish, 'target' | 'setting' | 'volume'>;
}

export interface SizeQuestion {
  readonly weather: HourlyWeather;
  /** The first is served first. */
  readonly demands: readonly BasinDemand[];
  /** Whether one basin is held while the other warms. */
  readonly together: boolean;
  /** Whether to hold on the mean of the month or on its hardest day. */
  readonly holdBy: 'month' | 'day';
}

export interface SizeCase {
  readonly id: 'hold' | 'warm-up-1' | 'warm-up-2';
  /** W. */
  readonly output: number;
}

export interface Size {
  /** W into the water. */
  readonly needed: number;
  /** The case that asks for most. */
  readonly governing: SizeCase['id'];
  readonly cases: readonly SizeCase[];
}

/** The output that meets every demand. */
export function heaterSize(question: SizeQuestion): Result<Size> {
  const { demands, together } = question;
  const issues: Issue[] = [];
  if (demands.length < 1 || demands.length > 2)
    issues.push({ code: 'ill-formed', where: 'demands', found: demands.length, min: 1, max: 2 });
  const holds = demands.map((demand, i) => take(holdOf(question, demand), i, issues));
  const warmUps = demands.map((demand, i) => take(warmUpOf(demand), i, issues));
  if (issues.length > 0) return fail(...issues);
  const total = holds.reduce<number>((sum, hold) => sum + Math.max(0, hold ?? 0), 0);
  const cases: SizeCase[] = [];
  if (holds.some((hold) => hold !== undefined)) cases.push({ id: 'hold', output: total });
  warmUps.forEach((output, i) => {
    if (output === undefined) return;
    const other = together ? total - Math.max(0, holds[i] ?? 0) : 0;
    cases.push({ id: i === 0 ? 'warm-up-1' : 'warm-up-2', output: output + other });
  });
  const [first, ...rest] = cases;
  if (!first) return fail({ code: 'ill-formed', where: 'demands', reason: 'nothing-asked' });
  const governing = rest.reduce((most, one) => (one.output > most.output ? one : most), first);
  return ok({ needed: governing.output, governing: governing.id, cases });
}

function take(result: Result<number> | undefined, i: number, issues: Issue[]): number | undefined {
  if (result === undefined) return undefined;
  if (result.ok) return result.value;
  issues.push(...result.issues.map((issue) => ({ ...issue, where: `demands.${i + 1}.${issue.where}` })));
  return undefined;
}

function holdOf({ weather, holdBy }: SizeQuestion, demand: BasinDemand): Result<number> | undefined {
  const { basin, temperature, holdMonth: month } = demand;
  if (month === undefined) return undefined;
  const hold = holdOutput({ weather, basin, temperature, month });
  if (!hold.ok) return hold;
  return ok(holdBy === 'day' ? hold.value.hardestDay : hold.value.mean);
}

function warmUpOf({ basin, temperature, warmUp }: BasinDemand): Result<number> | undefined {
  if (warmUp === undefined) return undefined;
  const { setting, volume } = basin;
  return outputToWarmUp({ ...warmUp, setting, volume, target: temperature });
}
