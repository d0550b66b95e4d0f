/**
 * Head lost in a thing that is no pipe: filter, heater, chlorinator, check valve, as its maker or a gauge gives it.
 *
 *     k:           h = K·V²/2g in a stated bore
 *     coefficient: h = (Q/Cf)²/(ρ0·g), Cv or Kv brought to SI
 *     point:       h = h0·(Q/Q0)^n, one reading and an exponent
 *     points:      √h straight between points, and from rest to the first one; a parabola beyond the last
 *
 * The exponent of a filter: 1 through a clean bed of sand at low rate (laminar), 2 through its valve and laterals;
 * 1.7 to 2 as a whole is usual (common practice, no source). A heater is 1.8 to 2.
 *
 * How sources disagree: programs join points of a loss curve by straight lines in h. Losses are near to parabolas, so
 * that straight lines in √h err less where points are few; both pass through every point.
 *
 * Source: definitions. Range: see `lossLawIssues`. Errors: issues; the plain functions check nothing.
 *
 * Worked example: 10 ft at 60 gpm, exponent 2 → 2.5 ft at 30 gpm.
 */
import type { CustomLaw, LinkLaw } from '../../numerics/index.ts';
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { Issue } from '../../trace/index.ts';
import { COEFFICIENT_DENSITY } from '../valve/flow-coefficient.ts';

export type LossLaw =
  | {
      readonly type: 'k';
      readonly k: number;
      /** m. */
      readonly insideDiameter: number;
    }
  | {
      readonly type: 'coefficient';
      /** Cf, m3/(s Pa^0.5). */
      readonly coefficient: number;
    }
  | {
      readonly type: 'point';
      /** m3/s. */
      readonly flow: number;
      /** m. */
      readonly loss: number;
      readonly exponent: number;
    }
  | {
      readonly type: 'points';
      /** m3/s, rising. */
      readonly flows: readonly number[];
      /** m, not falling. */
      readonly losses: readonly number[];
    };

/** h = r·Q^n of every law but `points`. */
export interface PowerLoss {
  readonly r: number;
  readonly n: number;
}

/** The law as r and n; undefined for `points`. */
export function powerOf(law: LossLaw): PowerLoss | undefined {
  if (law.type === 'points') return undefined;
  if (law.type === 'point') return { r: law.loss / law.flow ** law.exponent, n: law.exponent };
  if (law.type === 'coefficient') {
    return { r: 1 / (COEFFICIENT_DENSITY * STANDARD_GRAVITY * law.coefficient ** 2), n: 2 };
  }
  return { r: (8 * law.k) / (STANDARD_GRAVITY * Math.PI ** 2 * law.insideDiameter ** 4), n: 2 };
}

/** Head lost at a flow, m; signed like the flow. */
export function lossAt(law: LossLaw, flow: number): number {
  const power = powerOf(law);
  if (power === undefined) return pointsLaw(law as PointsLoss, 1).loss(flow);
  return Math.sign(flow) * power.r * Math.abs(flow) ** power.n;
}

/** The law as the network takes it, times a factor (1 new, more when clogged or scaled). */
export function lossLink(law: LossLaw, factor: number): LinkLaw {
  const power = powerOf(law);
  if (power === undefined) return pointsLaw(law as PointsLoss, factor);
  return { type: 'power', r: power.r * factor, n: power.n };
}

/** What is wrong with a law; empty when nothing is. */
export function lossLawIssues(where: string, law: LossLaw): Issue[] {
  const bounds = (
    values: Readonly<Record<string, readonly [value: number, min: number, max: number]>>,
  ): Issue[] =>
    Object.entries(values).flatMap(([name, [value, min, max]]): Issue[] => {
      if (value >= min && value <= max) return [];
      return [{ code: 'out-of-range', where: `${where}.${name}`, found: value, min, max }];
    });
  switch (law.type) {
    case 'k':
      return bounds({ k: [law.k, 0, 1e9], insideDiameter: [law.insideDiameter, 0.001, 5] });
    case 'coefficient':
      return bounds({ coefficient: [law.coefficient, 1e-12, 10] });
    case 'point':
      return bounds({
        flow: [law.flow, 1e-9, 100],
        loss: [law.loss, 0, 1e4],
        exponent: [law.exponent, 0.5, 3],
      });
    case 'points':
      return pointIssues(where, law);
  }
}

type PointsLoss = Extract<LossLaw, { type: 'points' }>;

function pointIssues(where: string, { flows, losses }: PointsLoss): Issue[] {
  const bad = (reason: string): Issue[] => [{ code: 'ill-formed', where, reason }];
  if (flows.length === 0 || losses.length !== flows.length) return bad('loss-curve-too-few-points');
  if (![...flows, ...losses].every(Number.isFinite)) return bad('loss-curve-not-numbers');
  const moving = flows.filter((q) => q > 0).length;
  if ((flows[0] as number) < 0 || (losses[0] as number) < 0 || moving === 0)
    return bad('loss-curve-not-numbers');
  if (flows[0] === 0 && losses[0] !== 0) return bad('loss-curve-misses-origin');
  for (let i = 1; i < flows.length; i++) {
    if ((flows[i] as number) <= (flows[i - 1] as number)) return bad('loss-curve-flows-not-rising');
    if ((losses[i] as number) < (losses[i - 1] as number)) return bad('loss-curve-falls');
  }
  return [];
}

/** Parabolas through the points, from the origin on. */
function pointsLaw({ flows, losses }: PointsLoss, factor: number): CustomLaw {
  const q = flows[0] === 0 ? [...flows] : [0, ...flows];
  const s = (flows[0] === 0 ? losses : [0, ...losses]).map((h) => Math.sqrt(h * factor));
  const last = q.length - 1;
  const rise = q.map((x, i) =>
    i === 0 ? 0 : ((s[i] as number) - (s[i - 1] as number)) / (x - (q[i - 1] as number)),
  );
  const beyond = (s[last] as number) / (q[last] as number);
  /** Place of the point at the far end of the line that holds a flow; one too many beyond the last. */
  const lineOf = (x: number): number => {
    let i = 1;
    while (i <= last && x > (q[i] as number)) i++;
    return x >= (q[last] as number) ? last + 1 : i;
  };
  const rootAt = (x: number, i: number): number =>
    i > last ? beyond * x : (s[i - 1] as number) + (rise[i] as number) * (x - (q[i - 1] as number));
  return {
    type: 'custom',
    expectedFlow: (q[last] as number) / 2,
    loss: (x) => {
      const size = Math.abs(x);
      const root = rootAt(size, lineOf(size));
      return Math.sign(x) * root * root;
    },
    slope: (x) => {
      const size = Math.abs(x);
      const i = lineOf(size);
      return 2 * rootAt(size, i) * (i > last ? beyond : (rise[i] as number));
    },
  };
}
