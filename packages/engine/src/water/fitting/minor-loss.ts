/**
 * Head lost in a fitting, valve, entrance or exit, by its loss coefficient.
 *
 *     h = K·V²/2g        K = 2·g·h·A²/Q²
 *
 * K belongs to the velocity in one stated diameter. Tabulated values are for fittings apart from each other and
 * carry 20 to 50 %; close-coupled fittings lose less or more than their sum.
 *
 * Source: definition of K. Range: K from 0.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: K = 0.57 (2 in elbow, 30·0.019) at 60 gpm in 2.067 in → 0.089 m (0.29 ft).
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import { type Formula, type Recorder, type Source, traced } from '../../trace/index.ts';
import { velocity } from '../pipe/velocity.ts';
import { DIAMETER, FLOW, LOSS, RESISTANCE } from '../variables.ts';

const SOURCE: Source = { document: 'Definition of the loss coefficient K', known: 'physics' };

export interface FittingFlow {
  /** K, referred to the velocity in `insideDiameter`. */
  readonly k: number;
  /** D, m. */
  readonly insideDiameter: number;
  /** Q, m3/s. */
  readonly flow: number;
}

/** Head lost, m of the flowing water; signed like the flow. */
export const fittingLoss: Formula<FittingFlow> = {
  id: 'water.fitting-loss',
  equation: 'h = K·V²/2g',
  inputs: { k: RESISTANCE, insideDiameter: DIAMETER, flow: FLOW },
  result: LOSS,
  source: SOURCE,
  kernel: (x, recorder?: Recorder) => {
    const { insideDiameter, flow } = x;
    const v = traced(velocity, { insideDiameter, flow }, recorder);
    return (x.k * v * Math.abs(v)) / (2 * STANDARD_GRAVITY);
  },
};

export interface FittingReading {
  /** h, m. */
  readonly head: number;
  /** D, m. */
  readonly insideDiameter: number;
  /** Q, m3/s, not zero. */
  readonly flow: number;
}

/** K of a thing that loses a known head at a known flow: the inverse of `fittingLoss`. */
export const lossCoefficient: Formula<FittingReading> = {
  id: 'water.loss-coefficient',
  equation: 'K = h·2g/V²',
  inputs: {
    head: { symbol: 'h', kind: 'head', min: 0, max: 1e5 },
    insideDiameter: DIAMETER,
    flow: { symbol: 'Q', kind: 'volume-flow', min: 1e-9, max: 100 },
  },
  result: RESISTANCE,
  source: SOURCE,
  kernel: (x, recorder?: Recorder) => {
    const v = traced(velocity, { insideDiameter: x.insideDiameter, flow: x.flow }, recorder);
    return (x.head * 2 * STANDARD_GRAVITY) / (v * v);
  },
};
