/**
 * How long a heater takes to warm water that loses heat meanwhile, and the temperature it cannot pass.
 *
 *     C·dT/dt = P − L(T)        t = ∫ C/(P − L(T)) dT from start to target        plateau: P = L(T)
 *
 * The losses rise with the water's temperature, so the warm-up slows and ends at the plateau, where they take all the
 * heater gives. A target at or above the plateau is never reached: that is an issue, not a long time. Where even
 * boiling water would not lose the output the plateau is the boiling point; anything over 50 °C stands outside the
 * range of the loss equations and only says that no pool temperature is out of reach.
 *
 * How far to believe it: evaporation is good to ±30 % at best; `earliest` and `latest` are the times with less and more
 * of it by its own half-width. A latest time may not exist where the earliest does.
 *
 * Convergence: the plateau to 1e-6 K by Brent's method. The integral is one of fixed points in a logarithm of what the
 * heater has left, in which it stays smooth up to the plateau; it is good to 1e-8 where the textbook has an answer.
 *
 * Source: first law; losses of `surfaceLosses`.
 * Range: water 0 to 50 °C; weather as in `surfaceBalance`; output 1 W to 20 MW.
 * Errors: values outside; a target under the start (`contradiction`); a target never reached (`no-solution`, with the
 * plateau as `max`).
 *
 * Worked example: 75 m3 and 50 m2 of bare water from 15 to 28 °C with 100 kW, air 18 °C at 50 %, 1 m/s, sky 5 °C →
 * 13.5 h (13.0 to 14.1) against 11.3 h without losses; plateau 49 °C.
 */

import { brentRoot } from '../../numerics/index.ts';
import { boilingTemperatureOfWater } from '../../properties/index.ts';
import { fail, type Issue, ok, type Recorder, type Result, rangeIssues, traced } from '../../trace/index.ts';
import {
  airSpeedIssues,
  EVAPORATION_TRAITS,
  emptyLosses,
  type SurfaceSetting,
  type SurfaceState,
  settingIssues,
  stateIssues,
  surfaceLosses,
} from '../surface/index.ts';
import { integrate } from './gauss.ts';
import { heatCapacityOf, naiveWarmUp } from './naive.ts';

export interface WarmUpQuestion {
  readonly setting: SurfaceSetting;
  /** The hour that lasts; its water temperature is not used. */
  readonly weather: Omit<SurfaceState, 'waterTemperature'>;
  /** m3. */
  readonly volume: number;
  /** K. */
  readonly start: number;
  /** K. */
  readonly target: number;
  /** Into the water, W. */
  readonly output: number;
}

export interface WarmUp {
  /** s. */
  readonly time: number;
  /** The same with nothing lost, s. */
  readonly naiveTime: number;
  /** Temperature at which the losses take all the heater gives, K. */
  readonly plateau: number;
  /** Time with evaporation at the low end of its uncertainty, s. */
  readonly earliest: number;
  /** At the high end; absent where the target is then out of reach. */
  readonly latest?: number;
  /** Losses at the start and at the target, W. */
  readonly lossAtStart: number;
  readonly lossAtTarget: number;
}

/** The warm-up under weather that does not change. */
export function warmUp(question: WarmUpQuestion, recorder?: Recorder): Result<WarmUp> {
  const issues = questionIssues(question);
  if (issues.length > 0) return fail(...issues);
  const top = plateau(question);
  if (!top.ok) return top;
  const { start, target, setting } = question;
  if (target >= top.value && target > start) return fail(outOfReach(target, top.value));
  const time = warmUpTime(question);
  if (!Number.isFinite(time)) return fail(outOfReach(target, top.value));
  const naiveTime = traced(naiveWarmUp, question, recorder);
  const lossOf = lossCurve(question);
  const off = EVAPORATION_TRAITS[setting.evaporation].relativeUncertainty;
  const latest = warmUpTime(withEvaporation(question, 1 + off));
  const answer: WarmUp = {
    time,
    naiveTime,
    plateau: top.value,
    earliest: warmUpTime(withEvaporation(question, 1 - off)),
    ...(Number.isFinite(latest) ? { latest } : {}),
    lossAtStart: lossOf(start),
    lossAtTarget: lossOf(target),
  };
  record(answer, recorder);
  return ok(answer);
}

function outOfReach(target: number, top: number): Issue {
  return {
    code: 'no-solution',
    where: 'target',
    found: target,
    max: top,
    kind: 'temperature',
    reason: 'plateau',
  };
}

/** Everything wrong with the question, short of its having no answer. */
export function questionIssues(question: WarmUpQuestion): Issue[] {
  const { setting, weather, start, target } = question;
  const issues = [
    ...settingIssues(setting),
    ...stateIssues({ ...weather, waterTemperature: 300 }),
    ...airSpeedIssues(setting.evaporation, weather.airSpeed),
    ...rangeIssues(naiveWarmUp, question),
  ];
  if (issues.length === 0 && target < start)
    issues.push({ code: 'contradiction', where: 'target', found: target, min: start, kind: 'temperature' });
  return issues;
}

/** Losses (W) at a water temperature (K) in the hour that lasts. */
export function lossCurve({
  setting,
  weather,
}: Pick<WarmUpQuestion, 'setting' | 'weather'>): (T: number) => number {
  const state = { ...weather, waterTemperature: 300 };
  const out = emptyLosses();
  return (T) => {
    state.waterTemperature = T;
    return surfaceLosses(setting, state, out);
  };
}

const COLDEST = 173.15;

/** Temperature (K) at which the losses equal the output; the boiling point where they never do. */
export function plateau(question: Pick<WarmUpQuestion, 'setting' | 'weather' | 'output'>): Result<number> {
  const lossOf = lossCurve(question);
  const boiling = boilingTemperatureOfWater(question.weather.pressure);
  const surplus = (T: number): number => question.output - lossOf(T);
  if (surplus(boiling) >= 0) return ok(boiling);
  return brentRoot(surplus, { low: COLDEST, high: boiling }, { tolerance: 1e-6 });
}

/** Time (s) from start to target; infinite or NaN where it is never reached. Checks nothing. */
export function warmUpTime(question: WarmUpQuestion): number {
  const { start, target, output } = question;
  if (target === start) return 0;
  const lossOf = lossCurve(question);
  const [left, more] = [output - lossOf(target), lossOf(target) - lossOf(start)];
  if (!(left > 0)) return Number.POSITIVE_INFINITY;
  const capacity = heatCapacityOf(question);
  const rate = (T: number): number => capacity / (output - lossOf(T));
  const width = target - start;
  if (more < 1e-3 * left) return integrate(rate, { from: start, to: target, panels: 8 });
  // In u = ln(left + more·x), x from the target down, the slow last stretch is as smooth as the rest.
  const stretched = (u: number): number => {
    const x = (Math.exp(u) - left) / more;
    return (rate(target - x * width) * width * Math.exp(u)) / more;
  };
  const span = { from: Math.log(left), to: Math.log(left + more) };
  return integrate(stretched, { ...span, panels: 4 + Math.ceil(2 * (span.to - span.from)) });
}

/** The same question with another share of evaporation. */
function withEvaporation(question: WarmUpQuestion, share: number): WarmUpQuestion {
  const { weather } = question;
  return { ...question, weather: { ...weather, activity: weather.activity * share } };
}

function record(answer: WarmUp, recorder: Recorder | undefined): void {
  if (!recorder) return;
  const kind = 'heat-rate';
  recorder.given({ id: 'heat.loss-at-start', value: answer.lossAtStart, kind });
  recorder.given({ id: 'heat.loss-at-target', value: answer.lossAtTarget, kind });
  recorder.given({ id: 'heat.plateau', value: answer.plateau, kind: 'temperature' });
  recorder.given({ id: 'heat.warm-up-time', value: answer.time, kind: 'time' });
}
