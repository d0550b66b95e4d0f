/**
 * Mean velocity of water in a full round pipe, and the flow that gives a velocity.
 *
 *     V = 4·Q / (π·D²)
 *
 * The trade prints it as ft/s = 0.4085·gpm / in², the same equation with its units folded in.
 *
 * Source: continuity. Range: diameter 1 mm to 5 m, any flow (its sign is its direction).
 * Errors: values outside the range are issues of `evaluate`; the kernels check nothing.
 *
 * Worked example: 125 gpm in 2 in Schedule 40 (2.067 in) → 11.95 ft/s = 3.64 m/s.
 */
import type { Formula, Source } from '../../trace/index.ts';
import { DIAMETER, FLOW } from '../variables.ts';

const SOURCE: Source = { document: 'Continuity of flow', known: 'physics' };

export interface PipeFlow {
  /** D, m. */
  readonly insideDiameter: number;
  /** Q, m3/s. */
  readonly flow: number;
}

/** Mean velocity, m/s; signed like the flow. */
export const velocity: Formula<PipeFlow> = {
  id: 'water.velocity',
  equation: 'V = 4·Q/(π·D²)',
  inputs: { insideDiameter: DIAMETER, flow: FLOW },
  result: { symbol: 'V', kind: 'velocity' },
  source: SOURCE,
  kernel: (x) => (4 * x.flow) / (Math.PI * x.insideDiameter * x.insideDiameter),
};

export interface PipeVelocity {
  /** D, m. */
  readonly insideDiameter: number;
  /** V, m/s. */
  readonly velocity: number;
}

/** Flow, m3/s, at which a pipe reaches a velocity: the inverse of `velocity`. */
export const flowAtVelocity: Formula<PipeVelocity> = {
  id: 'water.flow-at-velocity',
  equation: 'Q = V·π·D²/4',
  inputs: { insideDiameter: DIAMETER, velocity: { symbol: 'V', kind: 'velocity', min: -100, max: 100 } },
  result: FLOW,
  source: SOURCE,
  kernel: (x) => (x.velocity * Math.PI * x.insideDiameter * x.insideDiameter) / 4,
};
