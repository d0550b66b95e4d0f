/**
 * What a valve passes at each opening: its flow coefficient from shut (0) to fully open (1).
 *
 *     linear:           Cf = Cf,max·x
 *     equal percentage: Cf = Cf,max·R^(x−1), below x = 0.05 a straight line down to shut
 *     quarter turn:     K = K,open + K(θ), θ = 90°·(1 − x) turned from open; Cf = A·√(2/(ρ0·K))
 *
 * A quarter-turn valve is a ball (plug cock) or a butterfly; K(θ) is Perry's table, read along ln K between its
 * angles, along K from 0 to 5°, and along 1/√K from 60° to shut at 90°, where the table ends.
 *
 * How sources disagree: a control valve's R is printed from 30 to 100 (50 is usual), and every valve departs from its
 * curve near its seat. A pool valve's own curve is hardly ever published: the opening found here says where to start
 * turning, and a gauge or a flow meter where to stop.
 *
 * Source: IEC 60534-2-4 (from memory) for the forms; Perry's Chemical Engineers' Handbook, Table 6-4, for K(θ).
 * Range: opening from 0 to 1. Errors: `valveIssues`; `passing` itself checks nothing.
 *
 * Worked example: R = 50, x = 0.5 → 0.141 of the full coefficient; linear → 0.5.
 */
import type { Issue, Source } from '../../trace/index.ts';
import { coefficientOfK } from './flow-coefficient.ts';

export interface LinearValve {
  readonly type: 'linear';
  /** Cf fully open, m3/(s Pa^0.5). */
  readonly coefficient: number;
}

export interface EqualPercentageValve {
  readonly type: 'equal-percentage';
  /** Cf fully open, m3/(s Pa^0.5). */
  readonly coefficient: number;
  /** R, rangeability; 50 is usual. */
  readonly rangeability: number;
}

export interface QuarterTurnValve {
  readonly type: 'ball' | 'butterfly';
  /** D, m: the bore that its K refers to. */
  readonly insideDiameter: number;
  /** K fully open. */
  readonly openK: number;
}

export type Valve = LinearValve | EqualPercentageValve | QuarterTurnValve;

/** K over the open valve's own, by degrees turned from open. */
export const QUARTER_TURN_K = {
  degrees: [0, 5, 10, 20, 40, 60],
  ball: [0, 0.05, 0.29, 1.56, 17.3, 206],
  butterfly: [0, 0.24, 0.52, 1.54, 10.8, 118],
} as const;

export const QUARTER_TURN_SOURCE: Source = {
  document: "Perry's Chemical Engineers' Handbook",
  at: 'Table 6-4',
  known: 'read in a public copy',
};

/** Travel below which an equal-percentage valve is taken to close along a straight line. */
const SEAT = 0.05;

/** Cf at an opening from 0 to 1, m3/(s Pa^0.5); 0 when shut. */
export function passing(valve: Valve, opening: number): number {
  if (opening <= 0) return 0;
  if (valve.type === 'linear') return valve.coefficient * opening;
  if (valve.type === 'equal-percentage') {
    const seat = Math.max(opening, SEAT);
    return (valve.coefficient * valve.rangeability ** (seat - 1) * opening) / seat;
  }
  const k = valve.openK + turnedK(valve.type, 90 * (1 - opening));
  return coefficientOfK.kernel({ k, insideDiameter: valve.insideDiameter });
}

/** Opening at which a valve passes a coefficient: the inverse of `passing`; above 1 stands for "not even open". */
export function openingFor(valve: Valve, coefficient: number): number {
  if (coefficient <= 0) return 0;
  if (coefficient > passing(valve, 1)) return Number.POSITIVE_INFINITY;
  if (valve.type === 'linear') return coefficient / valve.coefficient;
  if (valve.type === 'equal-percentage') return equalPercentageFor(valve, coefficient);
  let low = 0;
  let high = 1;
  while (high - low > 1e-12) {
    const middle = (low + high) / 2;
    if (passing(valve, middle) < coefficient) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function equalPercentageFor(valve: EqualPercentageValve, coefficient: number): number {
  const atSeat = passing(valve, SEAT);
  if (coefficient <= atSeat) return (SEAT * coefficient) / atSeat;
  return 1 + Math.log(coefficient / valve.coefficient) / Math.log(valve.rangeability);
}

/** What is wrong with a valve's description; empty when nothing is. */
export function valveIssues(where: string, valve: Valve): Issue[] {
  const issues: Issue[] = [];
  const positive = (name: string, value: number, min: number): void => {
    if (value >= min && Number.isFinite(value)) return;
    issues.push({ code: 'out-of-range', where: `${where}.${name}`, found: value, min });
  };
  if ('openK' in valve) {
    positive('insideDiameter', valve.insideDiameter, 0.001);
    positive('openK', valve.openK, 1e-6);
    return issues;
  }
  positive('coefficient', valve.coefficient, 1e-12);
  if (valve.type === 'equal-percentage') positive('rangeability', valve.rangeability, 2);
  return issues;
}

/** K that turning adds to the open valve. */
function turnedK(type: 'ball' | 'butterfly', degrees: number): number {
  const angles = QUARTER_TURN_K.degrees;
  const values = QUARTER_TURN_K[type];
  const last = angles.length - 1;
  const atLast = values[last] as number;
  if (degrees >= (angles[last] as number)) return atLast * (30 / Math.max(90 - degrees, 1e-9)) ** 2;
  let i = 1;
  while ((angles[i] as number) < degrees) i++;
  const [from, to] = [angles[i - 1] as number, angles[i] as number];
  const [low, high] = [values[i - 1] as number, values[i] as number];
  const t = (degrees - from) / (to - from);
  return low === 0 ? high * t : low * (high / low) ** t;
}
