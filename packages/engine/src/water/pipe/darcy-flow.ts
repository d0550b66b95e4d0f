/**
 * Flow that a given head drives through a straight run: the inverse of `darcyLoss`.
 *
 * In turbulent flow no iteration is needed: Re·√f = D·√(2·g·h·D/L)/ν holds no flow, and it stands alone inside the
 * logarithm of Colebrook's equation, so that
 *
 *     Q = −2·A·√(2·g·D·h/L)·log10( (ε/D)/3.7 + 2.51·ν/(D·√(2·g·D·h/L)) )
 *
 * Laminar flow is Q = π·g·h·D⁴/(128·ν·L). Between them the loss is bisected, which it allows because it only rises.
 *
 * Source: Darcy–Weisbach with Colebrook–White, solved for Q. Range: head from 0; length above 0.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 27.243 ft across the run of Cengel & Cimbala, Example 8-3 → 0.2 ft3/s.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { Formula } from '../../trace/index.ts';
import { DIAMETER, FORWARD_FLOW, ROUGHNESS, VISCOSITY } from '../variables.ts';

import { DARCY_SOURCE, darcyLoss } from './darcy-weisbach.ts';
import { LAMINAR_TO, TURBULENT_FROM } from './friction-factor.ts';

export interface DarcyHead {
  /** D, m. */
  readonly insideDiameter: number;
  /** L, m. */
  readonly length: number;
  /** ε, m. */
  readonly roughness: number;
  /** ν, m2/s. */
  readonly viscosity: number;
  /** h, m. */
  readonly head: number;
}

/** Flow, m3/s. */
export const darcyFlow: Formula<DarcyHead> = {
  id: 'water.darcy-flow',
  equation: 'Q = −2·A·√(2·g·D·h/L)·log10((ε/D)/3.7 + 2.51·ν/(D·√(2·g·D·h/L)))',
  inputs: {
    insideDiameter: DIAMETER,
    length: { symbol: 'L', kind: 'length', min: 1e-6, max: 1e5 },
    roughness: ROUGHNESS,
    viscosity: VISCOSITY,
    head: { symbol: 'h', kind: 'head', min: 0, max: 1e5 },
  },
  result: FORWARD_FLOW,
  source: DARCY_SOURCE,
  kernel: (x) => {
    const perReynolds = (Math.PI * x.insideDiameter * x.viscosity) / 4;
    const laminar = laminarFlow(x);
    if (laminar <= LAMINAR_TO * perReynolds) return laminar;
    const turbulent = turbulentFlow(x);
    if (turbulent >= TURBULENT_FROM * perReynolds) return turbulent;
    return bisect(x, LAMINAR_TO * perReynolds, TURBULENT_FROM * perReynolds);
  },
};

function laminarFlow(x: DarcyHead): number {
  const d2 = x.insideDiameter * x.insideDiameter;
  return (Math.PI * STANDARD_GRAVITY * x.head * d2 * d2) / (128 * x.viscosity * x.length);
}

function turbulentFlow(x: DarcyHead): number {
  const d = x.insideDiameter;
  const root = Math.sqrt((2 * STANDARD_GRAVITY * d * x.head) / x.length);
  const inside = x.roughness / d / 3.7 + (2.51 * x.viscosity) / (d * root);
  return -2 * ((Math.PI * d * d) / 4) * root * Math.log10(inside);
}

/** Halves the bridge between the regimes sixty times, which is every bit a double holds. */
function bisect(x: DarcyHead, from: number, to: number): number {
  let low = from;
  let high = to;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (darcyLoss.kernel({ ...x, flow: middle }) < x.head) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
