/**
 * Turbulent friction factor by the Colebrook–White equation, solved exactly.
 *
 *     1/√f = −2·log10( (ε/D)/3.7 + 2.51/(Re·√f) )
 *
 * With x = 1/√f it is one smooth, convex root: Newton's step from Haaland's explicit start doubles the correct digits,
 * so that three steps reach the last digit a double holds; the iteration is bounded at ten and never needs them.
 *
 * How sources disagree: handbooks replace it with explicit fits (Swamee–Jain, 1 to 3 % off; Haaland, 1.5 %). Some
 * print 3.71 for 3.7, which moves f by 0.1 %. The equation as Colebrook printed it is followed here.
 *
 * Source: Colebrook, Journal of the Institution of Civil Engineers 11 (1939) 133–156.
 * Range: the turbulent regime, Re from 4000; below it see `frictionFactor`. Relative roughness up to 0.1.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: Re = 100,000, ε/D = 0.001 → f = 0.022175.
 */
import type { Formula, Source } from '../../trace/index.ts';

export const COLEBROOK_SOURCE: Source = {
  document: 'Colebrook, J. Inst. Civ. Eng. 11 (1939)',
  at: 'pages 133 to 156',
  known: 'read in a public copy',
};

/** Where the Colebrook equation takes over; below lies the transition. */
export const TURBULENT_FROM = 4000;

const STEPS_AT_MOST = 10;

/** Darcy friction factor of turbulent flow; no range check. */
export function colebrook(reynolds: number, relativeRoughness: number): number {
  const wall = relativeRoughness / 3.7;
  const viscous = 2.51 / reynolds;
  let x = -1.8 * Math.log10(wall ** 1.11 + 6.9 / reynolds);
  for (let step = 0; step < STEPS_AT_MOST; step++) {
    const inside = wall + viscous * x;
    const residual = x + 2 * Math.log10(inside);
    const change = residual / (1 + ((2 / Math.LN10) * viscous) / inside);
    x -= change;
    if (Math.abs(change) < 1e-13 * x) break;
  }
  return 1 / (x * x);
}

export interface PipeRegime {
  /** Re. */
  readonly reynolds: number;
  /** ε/D. */
  readonly relativeRoughness: number;
}

/** Friction factor of turbulent flow, dimensionless. */
export const turbulentFrictionFactor: Formula<PipeRegime> = {
  id: 'water.turbulent-friction-factor',
  equation: '1/√f = −2·log10((ε/D)/3.7 + 2.51/(Re·√f))',
  inputs: {
    reynolds: { symbol: 'Re', kind: 'ratio', min: TURBULENT_FROM, max: 1e9 },
    relativeRoughness: { symbol: 'ε/D', kind: 'ratio', min: 0, max: 0.1 },
  },
  result: { symbol: 'f', kind: 'ratio' },
  source: COLEBROOK_SOURCE,
  kernel: (x) => colebrook(x.reynolds, x.relativeRoughness),
};
