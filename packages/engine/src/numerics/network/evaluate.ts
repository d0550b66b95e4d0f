/**
 * Loss and slope of every link at its present flow: the inner loop. One plain loop for each kind of law, so that
 * nothing is decided, called or allocated link by link; then the few links that are shut, blocked or holding.
 *
 * Source: the laws of `law.ts`. Range, errors: laws are checked when they are set; nothing is checked here.
 */
import { bridge, bridgeSlope, colebrook, colebrookSlope, LAMINAR_END, TURBULENT_START } from './friction.ts';
import * as kind from './link-table.ts';
import { type LinkTable, STRIDE } from './link-table.ts';

/** Fills `loss` and `slope`; `floor` is the least slope that is handed on. */
export function evaluateLinks(links: LinkTable, floor: number): void {
  powers(links, floor);
  quadratics(links, floor);
  frictions(links);
  curves(links, floor);
  pumps(links, floor);
  regulators(links, floor);
  customs(links, floor);
  specials(links);
}

/**
 * |q|^(n−1) is the dearest number here. Within a hundredth of the flow it was last taken at, seven terms of the
 * binomial series give it to the last digit for a third of the price.
 */
const SERIES_REACH = 0.01;

function powers({ order, group, parameters: p, q, loss, slope }: LinkTable, floor: number): void {
  const end = group[kind.POWER + 1]!;
  for (let k = group[kind.POWER]!; k < end; k += 1) {
    const i = order[k]!;
    const at = i * STRIDE;
    const flow = q[i]!;
    const size = Math.abs(flow);
    if (size <= p[at + 3]!) {
      loss[i] = p[at + 4]! * flow;
      slope[i] = p[at + 4]!;
      continue;
    }
    const n = p[at + 1]!;
    const e = size * p[at + 5]! - 1;
    let friction: number;
    if (e < SERIES_REACH && e > -SERIES_REACH) friction = p[at + 6]! * binomial(n - 1, e);
    else {
      friction = p[at]! * size ** (n - 1);
      p[at + 5] = 1 / size;
      p[at + 6] = friction;
    }
    const m = p[at + 2]! * size;
    const tangent = n * friction + 2 * m;
    loss[i] = (friction + m) * flow;
    slope[i] = Math.max(tangent, floor);
  }
}

/** (1 + e)^k for small e, to the seventh power of e. */
function binomial(k: number, e: number): number {
  const last = (k - 5) * SIXTH * e * (1 + (k - 6) * SEVENTH * e);
  const middle = (k - 3) * 0.25 * e * (1 + (k - 4) * 0.2 * e * (1 + last));
  return 1 + k * e * (1 + (k - 1) * 0.5 * e * (1 + (k - 2) * THIRD * e * (1 + middle)));
}

/** Multiplied by, since a division costs as much as the rest of a term. */
const THIRD = 1 / 3;
const SIXTH = 1 / 6;
const SEVENTH = 1 / 7;

function quadratics({ order, group, parameters: p, q, loss, slope }: LinkTable, floor: number): void {
  const end = group[kind.QUADRATIC + 1]!;
  for (let k = group[kind.QUADRATIC]!; k < end; k += 1) {
    const i = order[k]!;
    const at = i * STRIDE;
    const flow = q[i]!;
    const size = Math.abs(flow);
    const straight = size <= p[at + 1]!;
    const c = straight ? p[at + 2]! : p[at]! * size;
    const tangent = straight ? c : 2 * c;
    loss[i] = c * flow;
    slope[i] = Math.max(tangent, floor);
  }
}

function frictions({ order, group, parameters: p, q, loss, slope }: LinkTable): void {
  const end = group[kind.FRICTION + 1]!;
  for (let k = group[kind.FRICTION]!; k < end; k += 1) {
    const i = order[k]!;
    const at = i * STRIDE;
    const flow = q[i]!;
    const size = Math.abs(flow);
    const reynolds = size * p[at + 1]!;
    const rough = p[at + 2]!;
    // c·f·q and its slope; laminar flow needs no division by a flow that may be zero.
    let friction = (64 * p[at]!) / p[at + 1]!;
    let tangent = friction;
    if (reynolds > LAMINAR_END) {
      const turbulent = reynolds >= TURBULENT_START;
      const f = turbulent ? colebrook(reynolds, rough) : bridge(reynolds, p[at + 4]!, p[at + 5]!);
      const df = turbulent
        ? colebrookSlope(reynolds, rough, f)
        : bridgeSlope(reynolds, p[at + 4]!, p[at + 5]!);
      friction = p[at]! * f * size;
      tangent = 2 * friction + p[at]! * df * reynolds * size;
    }
    const m = p[at + 3]! * size;
    loss[i] = (friction + m) * flow;
    slope[i] = tangent + 2 * m;
  }
}

function curves({ order, group, parameters: p, points, q, loss, slope }: LinkTable, floor: number): void {
  const end = group[kind.CURVE + 1]!;
  for (let k = group[kind.CURVE]!; k < end; k += 1) {
    const i = order[k]!;
    const sign = q[i]! < 0 && p[i * STRIDE] === 1 ? -1 : 1;
    const table = points[i]!;
    const x = sign * q[i]!;
    const at = lineAt(table, x);
    const tangent = table[at + 2]!;
    loss[i] = sign * (table[at + 1]! + tangent * (x - table[at]!));
    slope[i] = Math.max(tangent, floor);
  }
}

/** Where the line that holds `x` starts in a table of points (x, y, slope of the line after); the end lines go on. */
export function lineAt(points: Float64Array, x: number): number {
  const last = points.length - 6;
  let k = 0;
  while (k < last && x > points[k + 3]!) k += 3;
  return k;
}

function pumps({ order, group, parameters: p, q, loss, slope }: LinkTable, floor: number): void {
  const end = group[kind.PUMP + 1]!;
  for (let k = group[kind.PUMP]!; k < end; k += 1) {
    const i = order[k]!;
    const at = i * STRIDE;
    const flow = q[i]!;
    const straight = flow <= p[at + 3]!;
    const fall = straight ? p[at + 4]! : p[at + 1]! * flow ** (p[at + 2]! - 1);
    const tangent = straight ? fall : p[at + 2]! * fall;
    loss[i] = fall * flow - p[at]!;
    slope[i] = Math.max(tangent, floor);
  }
}

/** Regulators that stand wide open; those in charge are `specials`. */
function regulators({ order, group, parameters: p, q, loss, slope }: LinkTable, floor: number): void {
  const end = group[kind.REGULATOR + 1]!;
  for (let k = group[kind.REGULATOR]!; k < end; k += 1) {
    const i = order[k]!;
    const c = p[i * STRIDE]! * Math.abs(q[i]!);
    loss[i] = c * q[i]!;
    slope[i] = Math.max(2 * c, floor);
  }
}

function customs({ order, group, custom, q, loss, slope }: LinkTable, floor: number): void {
  const end = group[kind.CUSTOM + 1]!;
  for (let k = group[kind.CUSTOM]!; k < end; k += 1) {
    const i = order[k]!;
    const law = custom[i]!;
    const tangent = law.slope(q[i]!);
    loss[i] = law.loss(q[i]!);
    slope[i] = Math.max(tangent, floor);
  }
}

function specials(links: LinkTable): void {
  const { special, specialCount, state, q, loss, slope, lossAtRest, backSlope } = links;
  for (let k = 0; k < specialCount; k += 1) {
    const i = special[k]!;
    const doing = state[i]!;
    if (doing === kind.OPEN) continue;
    if (doing === kind.SHUT) {
      loss[i] = 0;
      slope[i] = Number.POSITIVE_INFINITY;
    } else if (doing === kind.BLOCKED) {
      loss[i] = lossAtRest[i]! + q[i]! * backSlope[i]!;
      slope[i] = backSlope[i]!;
    } else {
      const points = links.points[i]!;
      const at = lineAt(points, q[i]!);
      const droop = points[at + 2]!;
      const stiffest = links.parameters[i * STRIDE + 1]!;
      loss[i] = points[at + 1]! + droop * (q[i]! - points[at]!);
      slope[i] = Math.max(droop, stiffest);
    }
  }
}
