/**
 * EPANET's own link laws and constants, in SI, so that a difference between its answer and ours is a difference of
 * solvers and not of friction formulas.
 *
 * Source: EPANET 2.2 Users Manual (EPA/600/R-20/133), section 12.1 and table 3.1, and the constants of its
 * public-domain code: Hazen–Williams 4.727 (ft, ft3/s), minor loss 0.02517, g = 32.2 ft/s2, viscosity 1.1e-5 ft2/s;
 * a closed link leaks 1e-8 ft3/s per ft of head.
 */
import type { numerics } from '@firstfire/engine';
import { quantity } from '@firstfire/engine';
import type { Points } from './pad.ts';

const { CUBIC_FOOT, FOOT } = quantity;
/** EPANET's US gallons per minute in one ft3/s. */
export const GPM = CUBIC_FOOT / 448.831;

type LinkLaw = numerics.LinkLaw;

export interface EpanetPipe {
  readonly length: number;
  /** Inches. */
  readonly diameter: number;
  readonly roughness: number;
  readonly k: number;
}

/** Loss coefficient at a diameter in inches, as head per flow squared. */
function minor(k: number, diameter: number): number {
  return ((0.02517 * k) / (diameter / 12) ** 4) * (FOOT / CUBIC_FOOT ** 2);
}

export function hazenWilliams({ length, diameter, roughness, k }: EpanetPipe): LinkLaw {
  const r = (4.727 * length) / roughness ** 1.852 / (diameter / 12) ** 4.871;
  return { type: 'power', r: (r * FOOT) / CUBIC_FOOT ** 1.852, n: 1.852, m: minor(k, diameter) };
}

/** Darcy–Weisbach after Swamee and Jain, with the cubic of Dunlop from Re 2000 to 4000. */
export function darcyWeisbach({ length, diameter, roughness, k }: EpanetPipe, viscosity: number): LinkLaw {
  const d = diameter / 12;
  const area = (Math.PI * d * d) / 4;
  const c = length / (2 * 32.2 * d * area * area);
  const m = minor(k, diameter) / (FOOT / CUBIC_FOOT ** 2);
  const rough = roughness / 1000 / d;
  const perFlow = d / area / (1.1e-5 * viscosity);
  const loss = (q: number): number => {
    const size = Math.abs(q);
    const friction =
      size * perFlow <= 2000 ? (64 * c) / perFlow : c * swameeJain(size * perFlow, rough).f * size;
    return (friction + m * size) * q;
  };
  const slope = (q: number): number => {
    const size = Math.abs(q);
    if (size * perFlow <= 2000) return (64 * c) / perFlow + 2 * m * size;
    const { f, df } = swameeJain(size * perFlow, rough);
    return 2 * (c * f + m) * size + c * df * perFlow * size * size;
  };
  return {
    type: 'custom',
    loss: (q) => loss(q / CUBIC_FOOT) * FOOT,
    slope: (q) => slope(q / CUBIC_FOOT) * (FOOT / CUBIC_FOOT),
    expectedFlow: area * CUBIC_FOOT,
  };
}

/** Friction factor and its slope for Re above 2000. */
function swameeJain(reynolds: number, rough: number): { f: number; df: number } {
  if (reynolds < 4000) return dunlop(reynolds, rough);
  const y1 = 5.74 / reynolds ** 0.9;
  const y2 = rough / 3.7 + y1;
  const y3 = (-2 / Math.LN10) * Math.log(y2);
  const f = 1 / (y3 * y3);
  return { f, df: (1.8 * f * y1 * (-2 / Math.LN10)) / y2 / y3 / reynolds };
}

function dunlop(reynolds: number, rough: number): { f: number; df: number } {
  const y2 = rough / 3.7 + 5.74 / 4000 ** 0.9;
  const y3 = (-2 / Math.LN10) * Math.log(y2);
  const fa = 1 / (y3 * y3);
  const fb = (2 - 0.00514214965799 / (y2 * y3)) * fa;
  const r = reynolds / 2000;
  const x1 = 7 * fa - fb;
  const x2 = 0.128 - 17 * fa + 2.5 * fb;
  const x3 = -0.128 + 13 * fa - 2 * fb;
  const x4 = 0.032 - 3 * fa + 0.5 * fb;
  return { f: x1 + r * (x2 + r * (x3 + r * x4)), df: (x2 + r * (2 * x3 + r * 3 * x4)) / 2000 };
}

/** A pipe with a check valve: its own law forward, a leak back. */
export function checked(pipe: LinkLaw): LinkLaw {
  const leak = (1e8 * FOOT) / CUBIC_FOOT;
  if (pipe.type === 'power') {
    const { r, n, m = 0 } = pipe;
    return {
      type: 'custom',
      loss: (q) => (q < 0 ? leak * q : r * q ** n + m * q * q),
      slope: (q) => (q < 0 ? leak : n * r * q ** (n - 1) + 2 * m * q),
      expectedFlow: 1e-3,
    };
  }
  if (pipe.type !== 'custom') return pipe;
  return {
    ...pipe,
    loss: (q) => (q < 0 ? leak * q : pipe.loss(q)),
    slope: (q) => (q < 0 ? leak : pipe.slope(q)),
  };
}

/** A throttle by its loss coefficient; shut it leaks, and without any loss it keeps a trace of resistance. */
export function throttle(diameter: number, k: number | null): LinkLaw {
  if (k === null) return closed();
  if (k === 0) return { type: 'power', r: (1e-6 * FOOT) / CUBIC_FOOT, n: 1 };
  return { type: 'power', r: minor(k, diameter), n: 2 };
}

export function closed(): LinkLaw {
  return { type: 'power', r: (1e8 * FOOT) / CUBIC_FOOT, n: 1 };
}

export function device(points: Points): LinkLaw {
  return { type: 'curve', flows: points.map(([q]) => q * GPM), losses: points.map(([, h]) => h * FOOT) };
}

/** Three points from shutoff: a power curve through them; more: straight lines. */
export function pump(points: Points, speed: number): LinkLaw {
  if (points.length !== 3) {
    const flows = points.map(([q]) => q * GPM);
    return { type: 'pump', speed, curve: { shape: 'points', flows, heads: points.map(([, h]) => h * FOOT) } };
  }
  const [[, a], [q1, h1], [q2, h2]] = points as readonly [Points[0], Points[0], Points[0]];
  const c = Math.log((a - h2) / (a - h1)) / Math.log(q2 / q1);
  const b = (a - h1) / q1 ** c;
  return { type: 'pump', speed, curve: { shape: 'power', a: a * FOOT, b: (b * FOOT) / GPM ** c, c } };
}
