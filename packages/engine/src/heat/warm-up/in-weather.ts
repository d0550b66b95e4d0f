/**
 * A warm-up through real hours: a cold night slows it, a sunny noon helps, the cover comes and goes.
 *
 *     T' = T + Δt·(P − L(T))/C        Δt a twelfth of an hour, or shorter where the basin asks for it
 *
 * Source: first law; the march of `year/march`, with the heater always on until the target.
 * Range: as a pool year; start at any hour of it, at most a year long.
 * Errors: those of a pool year; `no-solution` with the warmest temperature reached as `max`.
 *
 * Worked example: weather that does not change gives the time of `warmUp`, within half a step.
 */
import { HOUR } from '../../quantity/index.ts';
import { fail, ok, type Result, type Variable, variableIssue } from '../../trace/index.ts';
import type { HourlyWeather } from '../climate/index.ts';
import { surfaceLosses } from '../surface/index.ts';
import { type BasinModel, loadHour, type YearBasin, yearModel } from '../year/index.ts';

export interface WarmUpInWeather {
  readonly weather: HourlyWeather;
  readonly basin: Omit<YearBasin, 'setPoint'>;
  /** Hour of the year at which the heater is lit. */
  readonly firstHour: number;
  /** K. */
  readonly start: number;
  /** K. */
  readonly target: number;
  /** W. */
  readonly output: number;
}

export interface WarmUpCourse {
  /** s from the lighting. */
  readonly time: number;
  /** Water at the end of each whole hour, K. */
  readonly hourly: readonly number[];
}

const STEPS = 12;
const TARGET: Variable = { symbol: 'T2', kind: 'temperature', min: 273.15, max: 323.15 };

/** The warm-up hour by hour. */
export function warmUpInWeather(question: WarmUpInWeather): Result<WarmUpCourse> {
  const { weather, basin, target, output, firstHour } = question;
  const setPoint = new Float64Array(weather.hours).fill(target);
  const model = yearModel({ weather, basins: [{ ...basin, setPoint }], output, start: [question.start] });
  const issues = [
    variableIssue('target', target, TARGET),
    variableIssue('firstHour', firstHour, { symbol: 'h', kind: 'ratio', min: 0, max: weather.hours - 1 }),
  ].filter((issue) => issue !== undefined);
  if (!model.ok) return fail(...issues, ...model.issues);
  const [one] = model.value.basins;
  if (issues.length > 0 || !one) return fail(...issues);
  return climb(one, { question, steps: Math.max(STEPS, model.value.steps) });
}

interface Climb {
  readonly question: WarmUpInWeather;
  readonly steps: number;
}

function climb(basin: BasinModel, { question, steps }: Climb): Result<WarmUpCourse> {
  const { target, output, firstHour, weather } = question;
  const step = HOUR / steps;
  const hourly: number[] = [];
  let T = question.start;
  let warmest = T;
  for (let n = 0; n < weather.hours; n++) {
    loadHour(basin, (Math.floor(firstHour) + n) % weather.hours);
    for (let s = 0; s < steps; s++) {
      if (T >= target) return ok({ time: n * HOUR + s * step, hourly });
      basin.state.waterTemperature = T;
      const rise =
        ((output - surfaceLosses(basin.setting, basin.state, basin.losses)) * step) / basin.capacity;
      if (T + rise >= target) return ok({ time: n * HOUR + s * step + ((target - T) / rise) * step, hourly });
      T += rise;
      warmest = Math.max(warmest, T);
    }
    hourly.push(T);
  }
  return fail({
    code: 'no-solution',
    where: 'target',
    found: target,
    max: warmest,
    kind: 'temperature',
    reason: 'never-in-this-weather',
  });
}
