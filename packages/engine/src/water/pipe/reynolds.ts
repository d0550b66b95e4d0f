/**
 * Reynolds number of the flow in a full round pipe.
 *
 *     Re = |V|·D / ν
 *
 * Source: definition. Range: see the variables; the result has no sign.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 200 L/min in 50 mm at 30 °C (ν = 0.80e-6 m2/s) → about 106,000; Crane TP-410M example 7-1 prints
 * 100,600 with the viscosity it reads from its chart.
 */
import { type Formula, type Recorder, type Source, traced } from '../../trace/index.ts';
import { DIAMETER, FLOW, VISCOSITY } from '../variables.ts';
import { velocity } from './velocity.ts';

const SOURCE: Source = { document: 'Definition of the Reynolds number', known: 'physics' };

export interface ReynoldsOf {
  /** D, m. */
  readonly insideDiameter: number;
  /** ν, m2/s. */
  readonly viscosity: number;
  /** Q, m3/s. */
  readonly flow: number;
}

/** Reynolds number, dimensionless. */
export const reynolds: Formula<ReynoldsOf> = {
  id: 'water.reynolds',
  equation: 'Re = |V|·D/ν',
  inputs: { insideDiameter: DIAMETER, viscosity: VISCOSITY, flow: FLOW },
  result: { symbol: 'Re', kind: 'ratio' },
  source: SOURCE,
  kernel: (x, recorder?: Recorder) => {
    const v = traced(velocity, { insideDiameter: x.insideDiameter, flow: x.flow }, recorder);
    return (Math.abs(v) * x.insideDiameter) / x.viscosity;
  },
};
