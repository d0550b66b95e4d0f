/**
 * Darcy friction factor in every regime of flow.
 *
 *     Re ≤ 2000:        f = 64/Re                                              (Hagen–Poiseuille)
 *     2000 < Re < 4000: cubic in Re that meets both neighbours in value and in slope
 *     Re ≥ 4000:        1/√f = −2·log10( (ε/D)/3.7 + 2.51/(Re·√f) ), solved exactly
 *
 * The kernel is the network solver's own, so that a pipe loses the same in a sum and in a pad.
 *
 * How sources disagree: between 2000 and 4000 the flow flickers and no friction factor is right; books print a gap,
 * a jump or a choice. A jump would leave a network with no solution at some flows, so that the gap is bridged by a
 * curve along which the head loss never falls as flow rises. A pad works far above it: 3 gpm in 2 in pipe is already
 * turbulent. Handbooks replace Colebrook's equation with explicit fits (Swamee–Jain, 1 to 3 % off).
 *
 * Source: Hagen–Poiseuille (physics); Colebrook, J. Inst. Civ. Eng. 11 (1939) 133–156; the bridge is ours.
 * Range: Re above 0 up to 1e9, relative roughness up to 0.1.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: Re = 1000 → f = 0.064; Re = 100,000 and ε/D = 0.001 → f = 0.022175.
 */
import { frictionFactor as factorOf } from '../../numerics/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

/** Where laminar flow ends. */
export const LAMINAR_TO = 2000;
/** Where Colebrook's equation takes over. */
export const TURBULENT_FROM = 4000;

const SOURCE: Source = {
  document: 'Colebrook, J. Inst. Civ. Eng. 11 (1939)',
  at: 'pages 133 to 156, as the open library fluids gives it; laminar: Hagen–Poiseuille',
  known: 'read in a public copy',
};

export type Regime = 'laminar' | 'transition' | 'turbulent';

/** The regime of a Reynolds number. */
export function regimeOf(reynolds: number): Regime {
  if (reynolds <= LAMINAR_TO) return 'laminar';
  return reynolds < TURBULENT_FROM ? 'transition' : 'turbulent';
}

export interface PipeRegime {
  /** Re. */
  readonly reynolds: number;
  /** ε/D. */
  readonly relativeRoughness: number;
}

/** f, dimensionless; the regime is found from Re. */
export const frictionFactor: Formula<PipeRegime> = {
  id: 'water.friction-factor',
  equation:
    'f = 64/Re (Re ≤ 2000); a + b·Re + c·Re² + d·Re³ (2000 < Re < 4000); 1/√f = −2·log10((ε/D)/3.7 + 2.51/(Re·√f))',
  inputs: {
    reynolds: { symbol: 'Re', kind: 'ratio', min: Number.MIN_VALUE, max: 1e9 },
    relativeRoughness: { symbol: 'ε/D', kind: 'ratio', min: 0, max: 0.1 },
  },
  result: { symbol: 'f', kind: 'ratio' },
  source: SOURCE,
  kernel: (x) => factorOf(x.reynolds, x.relativeRoughness),
};
