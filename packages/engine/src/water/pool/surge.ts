/**
 * Water hammer: the pressure a sudden stop of flow makes, and how sudden "sudden" is.
 *
 *     Δh = a·ΔV/g        t,critical = 2·L/a        a = √(B/ρ) / √(1 + (B/E)·(D/e))
 *
 * A valve that shuts faster than 2L/a makes the whole surge; slower, a part. The wave is slower, and the surge less,
 * in a soft wall: about 1,400 m/s in steel and copper, 300 to 500 m/s in PVC.
 *
 * How sources disagree: the wall term carries a factor near 1 for how the pipe is anchored (Poisson's ratio); it is
 * taken as 1. Bulk modulus of water: 2.19 GPa at 20 °C (2.0 to 2.3 between 0 and 50 °C).
 *
 * Source: Joukowsky (physics); wave speed after Korteweg; UFC 3-230-13A, Figure 4-5, prints a worked case.
 * Range: see the variables. Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: a = 2690 ft/s, V = 6.48 ft/s, g = 32 → 544.7 ft; L = 3400 ft → 2.53 s.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { Formula, Source, Variable } from '../../trace/index.ts';
import { DENSITY, DIAMETER } from '../variables.ts';

const SOURCE: Source = { document: 'Joukowsky equation; wave speed after Korteweg', known: 'physics' };
const WAVE: Variable = { symbol: 'a', kind: 'velocity', min: 10, max: 2000 };

/** Bulk modulus of water at 20 °C, Pa. */
export const WATER_BULK_MODULUS = 2.19e9;

export interface StoppedFlow {
  /** a, m/s. */
  readonly waveSpeed: number;
  /** ΔV, m/s. */
  readonly velocityChange: number;
}

/** Head over the running head that a sudden stop makes, m. */
export const surgeHead: Formula<StoppedFlow> = {
  id: 'water.surge-head',
  equation: 'Δh = a·ΔV/g',
  inputs: { waveSpeed: WAVE, velocityChange: { symbol: 'ΔV', kind: 'velocity', min: -50, max: 50 } },
  result: { symbol: 'Δh', kind: 'head' },
  source: SOURCE,
  kernel: (x) => (x.waveSpeed * x.velocityChange) / STANDARD_GRAVITY,
};

export interface WavePath {
  /** L, m. */
  readonly length: number;
  /** a, m/s. */
  readonly waveSpeed: number;
}

/** Time within which a closing valve makes the whole surge, s. */
export const criticalClosure: Formula<WavePath> = {
  id: 'water.critical-closure',
  equation: 't = 2·L/a',
  inputs: { length: { symbol: 'L', kind: 'length', min: 0, max: 1e5 }, waveSpeed: WAVE },
  result: { symbol: 't', kind: 'time' },
  source: SOURCE,
  kernel: (x) => (2 * x.length) / x.waveSpeed,
};

export interface ElasticPipe {
  /** D, m. */
  readonly insideDiameter: number;
  /** e, m. */
  readonly wall: number;
  /** E, Pa: elastic modulus of the wall; give 1e15 for a rigid one. */
  readonly modulus: number;
  /** ρ, kg/m3. */
  readonly density: number;
}

/** Speed of a pressure wave in a full pipe, m/s. */
export const waveSpeed: Formula<ElasticPipe> = {
  id: 'water.wave-speed',
  equation: 'a = √(B/ρ)/√(1 + (B/E)·(D/e))',
  inputs: {
    insideDiameter: DIAMETER,
    wall: { symbol: 'e', kind: 'length', min: 1e-5, max: 1 },
    modulus: { symbol: 'E', kind: 'absolute-pressure', min: 1e7, max: 1e16 },
    density: DENSITY,
  },
  result: WAVE,
  source: SOURCE,
  kernel: (x) => {
    const softness = (WATER_BULK_MODULUS / x.modulus) * (x.insideDiameter / x.wall);
    return Math.sqrt(WATER_BULK_MODULUS / x.density / (1 + softness));
  },
};
