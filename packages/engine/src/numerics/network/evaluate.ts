/**
 * Loss and slope of every link at its present flow: the inner loop. One plain loop for each kind of law, so that
 * nothing is decided, called or allocated link by link; then the few links that are shut, blocked or holding.
 *
 * Source: the laws of `law.ts`. Range, errors: laws are checked when they are set; nothing is checked here.
 */
import { bridge, bridgeSlope, LAMINAR_END, TURBULENT_START } from './friction.ts';
import { frictionRoot, LAST_RISE } from './friction-term.ts';
import * as kind from './link-table.ts';
import { type LinkTable, STRIDE, type Stretch } from './link-table.ts';
import { powerTerm } from './power-term.ts';

/** Fills `loss` and `slope` of all links. */
export function evaluateLinks(links: LinkTable): void {
  const { stretches } = links;
  powers(links, stretches[kind.POWER]!);
  quadratics(links, stretches[kind.QUADRATIC]!);
  frictions(links, stretches[kind.FRICTION]!);
  curves(links, stretches[kind.CURVE]!);
  pumps(links, stretches[kind.PUMP]!);
  regulators(links, stretches[kind.REGULATOR]!);
  customs(links, stretches[kind.CUSTOM]!);
  specials(links);
}

const BY_LAW = [powers, quadratics, frictions, curves, pumps, regulators, customs];

/** Fills `loss` and `slope` of one link that is open. */
export function evaluateOpen(links: LinkTable, i: number): void {
  links.single.begin = links.orderAt[i]!;
  links.single.end = links.single.begin + 1;
  BY_LAW[links.code[i]!]!(links, links.single);
}

function powers(links: LinkTable, { begin, end }: Stretch): void {
  const { order, parameters: p, q, loss, slope, slopeFloor } = links;
  for (let k = begin; k < end; k += 1) {
    const i = order[k]!;
    const at = i * STRIDE;
    const flow = q[i]!;
    const size = Math.abs(flow);
    const straight = size <= p[at + 3]!;
    const friction = straight ? p[at + 4]! : powerTerm(p, at, size);
    const m = straight ? 0 : p[at + 2]! * size;
    loss[i] = (friction + m) * flow;
    slope[i] = Math.max(straight ? friction : p[at + 1]! * friction + 2 * m, slopeFloor);
  }
}

function quadratics(links: LinkTable, { begin, end }: Stretch): void {
  const { order, parameters: p, q, loss, slope, slopeFloor } = links;
  for (let k = begin; k < end; k += 1) {
    const i = order[k]!;
    const at = i * STRIDE;
    const flow = q[i]!;
    const size = Math.abs(flow);
    const straight = size <= p[at + 1]!;
    const c = straight ? p[at + 2]! : p[at]! * size;
    const tangent = straight ? c : 2 * c;
    loss[i] = c * flow;
    slope[i] = Math.max(tangent, slopeFloor);
  }
}

function frictions(links: LinkTable, { begin, end }: Stretch): void {
  const { order, parameters: p, q, loss, slope } = links;
  for (let k = begin; k < end; k += 1) {
    const i = order[k]!;
    const at = i * STRIDE;
    const flow = q[i]!;
    const size = Math.abs(flow);
    const reynolds = size * p[at + 1]!;
    // c·f·q and its slope; laminar flow needs no division by a flow that may be zero.
    let friction = (64 * p[at]!) / p[at + 1]!;
    let tangent = friction;
    if (reynolds >= TURBULENT_START) {
      const x = frictionRoot(p, at, reynolds);
      friction = (p[at]! * size) / (x * x);
      tangent = 2 * friction * (1 - p[at + LAST_RISE]! / x);
    } else if (reynolds > LAMINAR_END) {
      friction = p[at]! * bridge(reynolds, p[at + 4]!, p[at + 5]!) * size;
      tangent = 2 * friction + p[at]! * bridgeSlope(reynolds, p[at + 4]!, p[at + 5]!) * reynolds * size;
    }
    const m = p[at + 3]! * size;
    loss[i] = (friction + m) * flow;
    slope[i] = tangent + 2 * m;
  }
}

function curves(links: LinkTable, { begin, end }: Stretch): void {
  const { order, parameters: p, points, q, loss, slope, slopeFloor } = links;
  for (let k = begin; k < end; k += 1) {
    const i = order[k]!;
    const sign = q[i]! < 0 && p[i * STRIDE] === 1 ? -1 : 1;
    const table = points[i]!;
    const x = sign * q[i]!;
    const at = lineAt(table, x);
    const tangent = table[at + 2]!;
    loss[i] = sign * (table[at + 1]! + tangent * (x - table[at]!));
    slope[i] = Math.max(tangent, slopeFloor);
  }
}

/** Where the line that holds `x` starts in a table of points (x, y, slope of the line after); the end lines go on. */
export function lineAt(points: Float64Array, x: number): number {
  const last = points.length - 6;
  let k = 0;
  while (k < last && x > points[k + 3]!) k += 3;
  return k;
}

function pumps(links: LinkTable, { begin, end }: Stretch): void {
  const { order, parameters: p, q, loss, slope, slopeFloor } = links;
  for (let k = begin; k < end; k += 1) {
    const i = order[k]!;
    const at = i * STRIDE;
    const flow = q[i]!;
    const straight = flow <= p[at + 3]!;
    const fall = straight ? p[at + 4]! : powerTerm(p, at, flow);
    const tangent = straight ? fall : p[at + 1]! * fall;
    loss[i] = fall * flow - p[at + 2]!;
    slope[i] = Math.max(tangent, slopeFloor);
  }
}

/** Regulators that stand wide open; those in charge are `specials`. */
function regulators(links: LinkTable, { begin, end }: Stretch): void {
  const { order, parameters: p, q, loss, slope, slopeFloor } = links;
  for (let k = begin; k < end; k += 1) {
    const i = order[k]!;
    const c = p[i * STRIDE]! * Math.abs(q[i]!);
    loss[i] = c * q[i]!;
    slope[i] = Math.max(2 * c, slopeFloor);
  }
}

function customs(links: LinkTable, { begin, end }: Stretch): void {
  const { order, custom, q, loss, slope, slopeFloor } = links;
  for (let k = begin; k < end; k += 1) {
    const i = order[k]!;
    const law = custom[i]!;
    const tangent = law.slope(q[i]!);
    loss[i] = law.loss(q[i]!);
    slope[i] = Math.max(tangent, slopeFloor);
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
