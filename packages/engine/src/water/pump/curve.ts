/**
 * A pump's head against its flow, as given: points read off a chart, or coefficients.
 *
 *     power form: H = a − b·Q^c          points: straight lines between them
 *
 * How sources disagree: from three points (shutoff, middle, end) EPANET fits the power form through all three; from
 * one (duty) point it assumes a shutoff head of 4/3 of it and an end flow of twice it. With more points straight
 * lines are safer than a fit. All of this is followed here, except that three points whose power would fall outside
 * 1 to 10 (nearly flat, then a cliff; or steep, then flat) are joined by straight lines too.
 *
 * A curve must fall as flow rises: where it rises, two flows share one head, and a pump may hunt between them. A
 * rising curve is an issue, not a guess. Flat pieces are allowed.
 *
 * Source: EPANET 2 Users Manual (EPA/600/R-00/057), Section 3.1 (pump curves).
 * Range: two points at least where points are given, flows from 0 rising, heads not rising.
 * Errors: `ill-formed` with reason `pump-curve-rises`, `pump-curve-flows-not-rising`, `pump-curve-too-few-points`.
 *
 * Worked example: 0, 5000, 7850 gpm at 81, 60, 20 ft, least squares → H = 82.47 − 0.2009·Q² (ft, ft3/s).
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';

export type PumpCurve =
  | {
      readonly shape: 'power';
      /** a, m. */
      readonly a: number;
      /** b, m over (m3/s)^c. */
      readonly b: number;
      readonly c: number;
    }
  | {
      readonly shape: 'points';
      /** m3/s, rising. */
      readonly flows: readonly number[];
      /** m, not rising. */
      readonly heads: readonly number[];
    };

/** The one point, or the points, of a chart: flow (m3/s) and head (m). */
export interface PumpPoint {
  readonly flow: number;
  readonly head: number;
}

/** What is wrong with a curve; empty when nothing is. */
export function pumpCurveIssues(where: string, curve: PumpCurve): Issue[] {
  if (curve.shape === 'power') {
    const good = curve.a > 0 && curve.b > 0 && curve.c > 0 && Number.isFinite(curve.a + curve.b + curve.c);
    if (good) return [];
    const reason = curve.b <= 0 ? 'pump-curve-rises' : 'pump-coefficients';
    return [{ code: 'ill-formed', where, reason }];
  }
  const { flows, heads } = curve;
  const bad = (reason: string): Issue[] => [{ code: 'ill-formed', where, reason }];
  if (flows.length < 2 || heads.length !== flows.length) return bad('pump-curve-too-few-points');
  if (![...flows, ...heads].every(Number.isFinite) || (flows[0] as number) < 0)
    return bad('pump-curve-not-numbers');
  if ((heads[0] as number) <= 0) return bad('pump-coefficients');
  for (let i = 1; i < flows.length; i++) {
    if ((flows[i] as number) <= (flows[i - 1] as number)) return bad('pump-curve-flows-not-rising');
    if ((heads[i] as number) > (heads[i - 1] as number)) return bad('pump-curve-rises');
  }
  return [];
}

/**
 * A curve from the points a chart or a plate gives: one (duty), two (shutoff and another, H = a − b·Q²), three
 * (power form through all, where the first is the shutoff), more (straight lines).
 */
export function pumpCurveOf(points: readonly PumpPoint[]): Result<PumpCurve> {
  const sorted = [...points].sort((p, q) => p.flow - q.flow);
  const flows = sorted.map((p) => p.flow);
  const heads = sorted.map((p) => p.head);
  const [first, second, third] = sorted;
  if (first === undefined)
    return fail({ code: 'ill-formed', where: 'curve', reason: 'pump-curve-too-few-points' });
  if (second === undefined) return checked(dutyCurve(first));
  const given = pumpCurveIssues('curve', { shape: 'points', flows, heads });
  if (given.length > 0) return fail(...given);
  const fromShutoff = first.flow === 0 && second.head < first.head;
  if (fromShutoff && third === undefined) return checked(quadratic(first.head, second));
  const fitted = fromShutoff && third && sorted.length === 3 ? through(first.head, second, third) : undefined;
  return ok(fitted ?? { shape: 'points', flows, heads });
}

/** Head at a flow by the curve at its own speed, m; outside the points the end pieces are carried on. */
export function pumpHead(curve: PumpCurve, flow: number): number {
  if (curve.shape === 'power') return curve.a - curve.b * Math.max(flow, 0) ** curve.c;
  const { flows, heads } = curve;
  let i = 1;
  while (i < flows.length - 1 && flow > (flows[i] as number)) i++;
  const [q0, q1] = [flows[i - 1] as number, flows[i] as number];
  const [h0, h1] = [heads[i - 1] as number, heads[i] as number];
  return h0 + ((h1 - h0) * (flow - q0)) / (q1 - q0);
}

function checked(curve: PumpCurve): Result<PumpCurve> {
  const issues = pumpCurveIssues('curve', curve);
  return issues.length > 0 ? fail(...issues) : ok(curve);
}

function dutyCurve(duty: PumpPoint): PumpCurve {
  return { shape: 'power', a: (4 / 3) * duty.head, b: duty.head / 3 / duty.flow ** 2, c: 2 };
}

function quadratic(shutoff: number, point: PumpPoint): PumpCurve {
  return { shape: 'power', a: shutoff, b: (shutoff - point.head) / point.flow ** 2, c: 2 };
}

function through(shutoff: number, middle: PumpPoint, end: PumpPoint): PumpCurve | undefined {
  const c = Math.log((shutoff - end.head) / (shutoff - middle.head)) / Math.log(end.flow / middle.flow);
  if (!(c >= 1 && c <= 10)) return undefined;
  return { shape: 'power', a: shutoff, b: (shutoff - middle.head) / middle.flow ** c, c };
}

/** H = a − b·Q² through any number of points by least squares. */
export function pumpQuadraticFit(points: readonly PumpPoint[]): Result<PumpCurve> {
  const squares = points.map((p) => p.flow * p.flow);
  const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;
  const square = mean(squares);
  const head = mean(points.map((p) => p.head));
  const spread = squares.reduce((sum, v) => sum + (v - square) ** 2, 0);
  if (!(spread > 0)) return fail({ code: 'ill-formed', where: 'curve', reason: 'pump-curve-too-few-points' });
  const together = points.reduce((sum, p, i) => sum + ((squares[i] as number) - square) * (p.head - head), 0);
  const b = -together / spread;
  return checked({ shape: 'power', a: head + b * square, b, c: 2 });
}
