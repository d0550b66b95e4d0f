/**
 * Head lost to friction in a straight run, by the physical law.
 *
 *     h = f·(L/D)·V²/2g        f = f(Re, ε/D) of `frictionFactor`
 *
 * Viscosity is an argument, so that cold water costs its true head: between 5 and 40 °C the loss of a smooth pipe
 * falls by about a fifth.
 *
 * Source: Darcy–Weisbach with Colebrook–White. Range: see the variables.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 0.2 ft3/s of 60 °F water through 200 ft of 2 in stainless pipe → 27.3 ft
 * (Cengel & Cimbala, Example 8-3).
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import { type Formula, type Recorder, type Source, traced } from '../../trace/index.ts';
import { DIAMETER, FLOW, LENGTH, LOSS, ROUGHNESS, VISCOSITY } from '../variables.ts';
import { frictionFactor } from './friction-factor.ts';
import { reynolds } from './reynolds.ts';
import { velocity } from './velocity.ts';

export const DARCY_SOURCE: Source = {
  document: 'Darcy–Weisbach equation',
  at: 'friction factor by Colebrook (1939)',
  known: 'physics',
};

/** Flow under which the Reynolds number runs out of digits, m3/s; the loss is nothing long before. */
const STILL = 1e-100;

export interface DarcyRun {
  /** D, m. */
  readonly insideDiameter: number;
  /** L, m. */
  readonly length: number;
  /** ε, m. */
  readonly roughness: number;
  /** ν, m2/s. */
  readonly viscosity: number;
  /** Q, m3/s; a negative flow loses head the other way. */
  readonly flow: number;
}

/** Head lost along the run, m of the flowing water; signed like the flow. */
export const darcyLoss: Formula<DarcyRun> = {
  id: 'water.darcy-loss',
  equation: 'h = f·(L/D)·V²/2g',
  inputs: {
    insideDiameter: DIAMETER,
    length: LENGTH,
    roughness: ROUGHNESS,
    viscosity: VISCOSITY,
    flow: FLOW,
  },
  result: LOSS,
  source: DARCY_SOURCE,
  kernel: (x, recorder?: Recorder) => {
    const { insideDiameter, flow, viscosity } = x;
    if (Math.abs(flow) < STILL) return 0;
    const v = traced(velocity, { insideDiameter, flow }, recorder);
    const re = traced(reynolds, { insideDiameter, viscosity, flow }, recorder);
    const relativeRoughness = x.roughness / insideDiameter;
    const f = traced(frictionFactor, { reynolds: re, relativeRoughness }, recorder);
    return (f * (x.length / insideDiameter) * v * Math.abs(v)) / (2 * STANDARD_GRAVITY);
  },
};
