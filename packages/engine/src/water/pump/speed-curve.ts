/**
 * Head of a pump given by coefficients, at its flow and speed.
 *
 *     H = s²·(a − b·(Q/s)^c)
 *
 * Source: affinity laws on the power form of EPANET 2 (EPA/600/R-00/057), Section 3.1.
 * Range: speed ratio above 0 to 3. Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: a = 24 m, b = 300,000, c = 2, s = 0.5, Q = 2 L/s → 4.8 m.
 */
import type { Formula } from '../../trace/index.ts';
import { FORWARD_FLOW } from '../variables.ts';

export interface PumpAtSpeed {
  /** a, m. */
  readonly shutoff: number;
  /** b, m over (m3/s)^c. */
  readonly fall: number;
  /** c. */
  readonly power: number;
  /** s. */
  readonly speedRatio: number;
  /** Q, m3/s. */
  readonly flow: number;
}

/** H, m. */
export const pumpHeadAtSpeed: Formula<PumpAtSpeed> = {
  id: 'water.pump-head-at-speed',
  equation: 'H = s²·(a − b·(Q/s)^c)',
  inputs: {
    shutoff: { symbol: 'a', kind: 'head', min: 0, max: 1e4 },
    fall: { symbol: 'b', kind: 'ratio', min: 0 },
    power: { symbol: 'c', kind: 'ratio', min: 0.1, max: 20 },
    speedRatio: { symbol: 's', kind: 'ratio', min: 1e-6, max: 3 },
    flow: FORWARD_FLOW,
  },
  result: { symbol: 'H', kind: 'head' },
  source: {
    document: 'EPANET 2 Users Manual (EPA/600/R-00/057)',
    at: 'Section 3.1',
    known: 'read in a public copy',
  },
  kernel: (x) => x.speedRatio ** 2 * (x.shutoff - x.fall * (x.flow / x.speedRatio) ** x.power),
};
