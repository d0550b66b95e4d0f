/**
 * Darcy friction factor in every regime of flow.
 *
 *     Re ≤ 2000:        f = 64/Re                          (Hagen–Poiseuille)
 *     2000 < Re < 4000: cubic in Re that meets both neighbours in value and in slope
 *     Re ≥ 4000:        Colebrook–White, exact
 *
 * How sources disagree: between 2000 and 4000 the flow flickers and no friction factor is right; books print a gap,
 * a jump or a choice. A jump would leave a network with no solution at some flows, so that the gap is bridged by a
 * curve along which the head loss never falls as flow rises. A pad works far above it: 1 gpm in 2 in pipe is
 * already at Re 1,600.
 *
 * Source: Hagen–Poiseuille (physics); Colebrook (1939); the bridge is ours.
 * Range: Re above 0, relative roughness up to 0.1.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: Re = 1000 → f = 0.064; Re = 100,000 and ε/D = 0.001 → f = 0.022175.
 */
import { type Formula, traced } from '../../trace/index.ts';
import {
  COLEBROOK_SOURCE,
  colebrook,
  type PipeRegime,
  TURBULENT_FROM,
  turbulentFrictionFactor,
} from './colebrook.ts';

/** Where laminar flow ends. */
export const LAMINAR_TO = 2000;

export type Regime = 'laminar' | 'transition' | 'turbulent';

/** The regime of a Reynolds number. */
export function regimeOf(reynolds: number): Regime {
  if (reynolds <= LAMINAR_TO) return 'laminar';
  return reynolds < TURBULENT_FROM ? 'transition' : 'turbulent';
}

/** f, dimensionless; the regime is found from Re. */
export const frictionFactor: Formula<PipeRegime> = {
  id: 'water.friction-factor',
  equation: 'f = 64/Re (Re ≤ 2000); cubic bridge (2000 < Re < 4000); Colebrook (Re ≥ 4000)',
  inputs: {
    reynolds: { symbol: 'Re', kind: 'ratio', min: Number.MIN_VALUE, max: 1e9 },
    relativeRoughness: { symbol: 'ε/D', kind: 'ratio', min: 0, max: 0.1 },
  },
  result: { symbol: 'f', kind: 'ratio' },
  source: COLEBROOK_SOURCE,
  kernel: (x, recorder) => {
    const regime = regimeOf(x.reynolds);
    if (regime === 'laminar') return 64 / x.reynolds;
    if (regime === 'transition') return bridge(x.reynolds, x.relativeRoughness);
    return traced(turbulentFrictionFactor, x, recorder);
  },
};

/** The cubic through both ends, with the slopes they have there. */
function bridge(reynolds: number, relativeRoughness: number): number {
  const span = TURBULENT_FROM - LAMINAR_TO;
  const t = (reynolds - LAMINAR_TO) / span;
  const left = 64 / LAMINAR_TO;
  const leftSlope = (-left / LAMINAR_TO) * span;
  const right = colebrook(TURBULENT_FROM, relativeRoughness);
  const rightSlope = colebrookSlope(TURBULENT_FROM, relativeRoughness, right) * span;
  const u = 1 - t;
  return u * u * ((1 + 2 * t) * left + t * leftSlope) + t * t * ((1 + 2 * u) * right - u * rightSlope);
}

/** df/dRe along the Colebrook curve, by implicit differentiation of it. */
function colebrookSlope(reynolds: number, relativeRoughness: number, f: number): number {
  const x = 1 / Math.sqrt(f);
  const viscous = 2.51 / reynolds;
  const inside = relativeRoughness / 3.7 + viscous * x;
  const a = 2 / Math.LN10 / inside;
  const dx = (a * viscous * x) / reynolds / (1 + a * viscous);
  return -2 * f * Math.sqrt(f) * dx;
}
