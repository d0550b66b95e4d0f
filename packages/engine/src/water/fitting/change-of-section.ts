/**
 * Loss coefficients of a change of pipe size, referred to the velocity in the smaller pipe.
 *
 *     sudden expansion:   K = (1 − β²)²            (Borda–Carnot)
 *     sudden contraction: K = 0.5·(1 − β²)
 *     gradual, full angle θ up to 45°: 2.6·sin(θ/2)·(1 − β²)² widening, 0.8·sin(θ/2)·(1 − β²) narrowing
 *     steeper contraction: 0.5·√sin(θ/2)·(1 − β²)
 *
 * with β = d/D, smaller over larger.
 *
 * How sources disagree: Weisbach's and Idelchik's contraction values stand up to 20 % under the line 0.5·(1 − β²),
 * which is Crane's and is followed.
 *
 * Source: Crane TP-410 (1986), page A-26, formulas 1 to 4. Range: β from 0 to 1; θ from 0 to 180°.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 3 in to 2 in Schedule 40, sudden: β = 2.067/3.068 → contraction 0.273, expansion 0.298.
 */
import type { Formula, Variable } from '../../trace/index.ts';
import { RESISTANCE } from '../variables.ts';
import { CRANE_SOURCE } from './complete-turbulence.ts';

const BETA: Variable = { symbol: 'β', kind: 'ratio', min: 0, max: 1 };
const ANGLE: Variable = { symbol: 'θ', kind: 'angle', min: 0, max: Math.PI };
const STEEP = Math.PI / 4;

export interface SectionChange {
  /** β, smaller over larger diameter. */
  readonly diameterRatio: number;
  /** θ, full angle of the cone, rad; π when sudden. */
  readonly angle: number;
}

/** K of a widening, on the velocity in the smaller pipe. */
export const expansionK: Formula<SectionChange> = {
  id: 'water.expansion-k',
  equation: 'K = 2.6·sin(θ/2)·(1−β²)² (θ ≤ 45°); (1−β²)² (θ > 45°)',
  inputs: { diameterRatio: BETA, angle: ANGLE },
  result: RESISTANCE,
  source: CRANE_SOURCE,
  kernel: (x) => {
    const sudden = (1 - x.diameterRatio ** 2) ** 2;
    return x.angle > STEEP ? sudden : 2.6 * Math.sin(x.angle / 2) * sudden;
  },
};

/** K of a narrowing, on the velocity in the smaller pipe. */
export const contractionK: Formula<SectionChange> = {
  id: 'water.contraction-k',
  equation: 'K = 0.8·sin(θ/2)·(1−β²) (θ ≤ 45°); 0.5·√sin(θ/2)·(1−β²) (θ > 45°)',
  inputs: { diameterRatio: BETA, angle: ANGLE },
  result: RESISTANCE,
  source: CRANE_SOURCE,
  kernel: (x) => {
    const steps = 1 - x.diameterRatio ** 2;
    const half = Math.sin(x.angle / 2);
    return x.angle > STEEP ? 0.5 * Math.sqrt(half) * steps : 0.8 * half * steps;
  },
};
