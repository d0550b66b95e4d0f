/**
 * Head lost in a filter, heater or other device by its law r·Q^n, as a formula that can show its working.
 *
 *     h = r·Q^n
 *
 * Source: one reading and an exponent; see `LossLaw`. Range: n from 0.5 to 3.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 3.048 m at 3.785 L/s, n = 2 → r = 212,700; at half the flow 0.762 m.
 */
import type { Formula } from '../../trace/index.ts';
import { FLOW, LOSS } from '../variables.ts';

export interface DeviceFlow {
  /** r, m over (m3/s)^n. */
  readonly resistance: number;
  /** n. */
  readonly exponent: number;
  /** Q, m3/s. */
  readonly flow: number;
}

/** Head lost, m; signed like the flow. */
export const deviceLoss: Formula<DeviceFlow> = {
  id: 'water.device-loss',
  equation: 'h = r·Q^n',
  inputs: {
    resistance: { symbol: 'r', kind: 'ratio', min: 0 },
    exponent: { symbol: 'n', kind: 'ratio', min: 0.5, max: 3 },
    flow: FLOW,
  },
  result: LOSS,
  source: { document: 'Loss law of the device as given', known: 'common practice, no source' },
  kernel: (x) => Math.sign(x.flow) * x.resistance * Math.abs(x.flow) ** x.exponent,
};
