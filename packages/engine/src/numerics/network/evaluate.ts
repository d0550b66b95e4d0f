/**
 * Loss and slope of every link at its present flow: the inner loop. Each law writes its pair straight into the
 * table, so that nothing is allocated and every call site sees one kind of number.
 *
 * Source: the laws of `law.ts`. Range, errors: laws are checked when they are set; nothing is checked here.
 */
import { bridge, bridgeSlope, colebrook, colebrookSlope } from './friction.ts';
import {
  BLOCKED,
  CURVE,
  CUSTOM,
  FRICTION,
  HOLDING,
  type LinkTable,
  POWER,
  PUMP,
  QUADRATIC,
  REGULATOR,
  SHUT,
  STRIDE,
} from './link-table.ts';

/** Fills `loss` and `slope`; `floor` is the least slope that is handed on. */
export function evaluateLinks(links: LinkTable, floor: number): void {
  const { count, state } = links;
  for (let i = 0; i < count; i += 1) {
    const doing = state[i]!;
    if (doing === SHUT) put(links, i, 0, Number.POSITIVE_INFINITY);
    else if (doing === BLOCKED)
      put(links, i, links.lossAtRest[i]! + links.q[i]! * links.backSlope[i]!, links.backSlope[i]!);
    else evaluateLaw(links, i, floor);
  }
}

/** The law of one open or holding link. */
export function evaluateLaw(links: LinkTable, i: number, floor: number): void {
  switch (links.code[i]) {
    case POWER:
      power(links, i, links.q[i]!);
      break;
    case QUADRATIC:
      quadratic(links, i, links.q[i]!);
      break;
    case FRICTION:
      friction(links, i, links.q[i]!);
      break;
    case CURVE:
      curve(links, i, links.q[i]!);
      break;
    case PUMP:
      pump(links, i, links.q[i]!);
      break;
    case REGULATOR:
      regulator(links, i, links.q[i]!);
      break;
    case CUSTOM:
      put(links, i, links.custom[i]!.loss(links.q[i]!), links.custom[i]!.slope(links.q[i]!));
      break;
  }
  if (!(links.slope[i]! >= floor)) links.slope[i] = floor;
}

function put(links: LinkTable, i: number, loss: number, slope: number): void {
  links.loss[i] = loss;
  links.slope[i] = slope;
}

function power(links: LinkTable, i: number, q: number): void {
  const p = links.parameters;
  const at = i * STRIDE;
  const size = Math.abs(q);
  if (size <= p[at + 3]!) {
    put(links, i, p[at + 4]! * q, p[at + 4]!);
    return;
  }
  const n = p[at + 1]!;
  const r = p[at]! * size ** (n - 1);
  const m = p[at + 2]! * size;
  put(links, i, (r + m) * q, n * r + 2 * m);
}

function quadratic(links: LinkTable, i: number, q: number): void {
  const p = links.parameters;
  const at = i * STRIDE;
  const size = Math.abs(q);
  if (size <= p[at + 1]!) {
    put(links, i, p[at + 2]! * q, p[at + 2]!);
    return;
  }
  const c = p[at]! * size;
  put(links, i, c * q, 2 * c);
}

const LAMINAR_END = 2000;
const TURBULENT_START = 4000;

function friction(links: LinkTable, i: number, q: number): void {
  const p = links.parameters;
  const at = i * STRIDE;
  const size = Math.abs(q);
  const perFlow = p[at + 1]!;
  const reynolds = size * perFlow;
  if (reynolds <= LAMINAR_END) {
    const laminar = (64 * p[at]!) / perFlow;
    const m = p[at + 3]! * size;
    put(links, i, (laminar + m) * q, laminar + 2 * m);
    return;
  }
  const turbulent = reynolds >= TURBULENT_START;
  const f = turbulent ? colebrook(reynolds, p[at + 2]!) : bridge(reynolds, p[at + 4]!, p[at + 5]!);
  const df = turbulent
    ? colebrookSlope(reynolds, p[at + 2]!, f)
    : bridgeSlope(reynolds, p[at + 4]!, p[at + 5]!);
  const c = (p[at]! * f + p[at + 3]!) * size;
  put(links, i, c * q, 2 * c + p[at]! * df * reynolds * size);
}

function curve(links: LinkTable, i: number, q: number): void {
  if (q < 0 && links.parameters[i * STRIDE] === 1) {
    lines(links, i, -q);
    links.loss[i] = -links.loss[i]!;
  } else lines(links, i, q);
}

/** Straight lines through the points of the link; the end lines go on. */
function lines(links: LinkTable, i: number, x: number): void {
  const points = links.points[i]!;
  let k = 0;
  const last = points.length - 4;
  while (k < last && x > points[k + 2]!) k += 2;
  const slope = (points[k + 3]! - points[k + 1]!) / (points[k + 2]! - points[k]!);
  put(links, i, points[k + 1]! + slope * (x - points[k]!), slope);
}

function pump(links: LinkTable, i: number, q: number): void {
  const p = links.parameters;
  const at = i * STRIDE;
  if (q <= p[at + 3]!) {
    put(links, i, p[at + 4]! * q - p[at]!, p[at + 4]!);
    return;
  }
  const c = p[at + 2]!;
  const fall = p[at + 1]! * q ** (c - 1);
  put(links, i, fall * q - p[at]!, c * fall);
}

function regulator(links: LinkTable, i: number, q: number): void {
  if (links.state[i] === HOLDING) {
    lines(links, i, q);
    links.slope[i] = Math.max(links.slope[i]!, links.parameters[i * STRIDE + 1]!);
  } else {
    const c = links.parameters[i * STRIDE]! * Math.abs(q);
    put(links, i, c * q, 2 * c);
  }
}
