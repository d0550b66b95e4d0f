/**
 * A clocking from dial to heat input, with the ± that the stopwatch leaves.
 *
 * Source, range and errors as in `clock.ts`. The stopwatch's ± (both ends together, 1 s unless given) is an interval,
 * not a deviation: the true flow lies between its ends if everything else is right.
 *
 * Worked example: 2 ft3 dial, one turn in 18 s, ±1 s → 400 metered ft3/h, between 379 and 424.
 */
import { evaluate, fail, type Issue, ok, type Recorder, type Result } from '../../trace/index.ts';
import { type DialReading, indexState, type MeterState, meteredFlow, standardFlow } from './clock.ts';

export interface Clocking extends DialReading, MeterState {
  /** Gross, J a standard m3. */
  readonly heatingValue: number;
  /** ± of the timing, s; 1 unless given. */
  readonly secondsUncertainty?: number;
}

export interface Interval {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

export interface ClockedMeter {
  /** Metered m3/s. */
  readonly flow: Interval;
  /** Standard m3/s. */
  readonly standardFlow: Interval;
  /** W, gross. */
  readonly heatInput: Interval;
}

/** Flow and heat input of a clocked meter. */
export function clockMeter(clocking: Clocking, recorder?: Recorder): Result<ClockedMeter> {
  const { seconds, secondsUncertainty = 1, heatingValue } = clocking;
  const issues = timingIssues(seconds, secondsUncertainty, heatingValue);
  if (issues.length > 0) return fail(...issues);
  const { dial, revolutions } = clocking;
  const flow = evaluate(meteredFlow, { dial, revolutions, seconds }, recorder);
  if (!flow.ok) return flow;
  const standard = evaluate(standardFlow, { flow: flow.value, ...indexState(clocking) }, recorder);
  if (!standard.ok) return standard;
  const spread = (value: number): Interval => ({
    low: (value * seconds) / (seconds + secondsUncertainty),
    value,
    high: (value * seconds) / (seconds - secondsUncertainty),
  });
  return ok({
    flow: spread(flow.value),
    standardFlow: spread(standard.value),
    heatInput: spread(standard.value * heatingValue),
  });
}

function timingIssues(seconds: number, uncertainty: number, heatingValue: number): Issue[] {
  const issues: Issue[] = [];
  if (!(uncertainty >= 0 && uncertainty < seconds))
    issues.push({
      code: 'out-of-range',
      where: 'secondsUncertainty',
      found: uncertainty,
      min: 0,
      max: seconds,
      kind: 'time',
    });
  if (!(heatingValue >= 5e6 && heatingValue <= 150e6))
    issues.push({
      code: 'out-of-range',
      where: 'heatingValue',
      found: heatingValue,
      min: 5e6,
      max: 150e6,
      kind: 'heating-value',
    });
  return issues;
}
