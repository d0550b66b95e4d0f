/**
 * Head a pump makes, from its two gauges.
 *
 *     H = (p,discharge + p,vacuum)/(ρ·g) + Δz + (V2² − V1²)/2g
 *
 * Vacuum is read positive below the atmosphere. The trade's form, 2.31·psi + 1.133·inHg, is this with 60 °F water;
 * the velocity term vanishes when both taps stand in pipe of one size.
 *
 * Source: Hydraulic Institute definition of total head (from memory).
 * Range: pressures to 2 MPa, vacuum to one atmosphere.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 18 psi and 6 inHg at one height → 48.4 ft.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';
import { DENSITY } from '../variables.ts';

const SOURCE: Source = { document: 'Hydraulic Institute, definition of total head', known: 'from memory' };
const SPEED = { kind: 'velocity', min: 0, max: 50 } as const;

export interface PumpGauges {
  /** Gauge pressure at the outlet, Pa. */
  readonly dischargePressure: number;
  /** Vacuum at the inlet, Pa below the atmosphere; negative when the inlet is under pressure. */
  readonly suctionVacuum: number;
  /** Height of the discharge gauge over the suction gauge, m. */
  readonly gaugeHeight: number;
  /** V1, m/s. */
  readonly suctionVelocity: number;
  /** V2, m/s. */
  readonly dischargeVelocity: number;
  /** ρ, kg/m3. */
  readonly density: number;
}

/** Total head of the pump, m. */
export const totalHead: Formula<PumpGauges> = {
  id: 'water.total-head',
  equation: 'H = (p2 + pv)/(ρ·g) + Δz + (V2² − V1²)/2g',
  inputs: {
    dischargePressure: { symbol: 'p2', kind: 'pressure', min: -1.1e5, max: 2e6 },
    suctionVacuum: { symbol: 'pv', kind: 'pressure-difference', min: -2e6, max: 1.1e5 },
    gaugeHeight: { symbol: 'Δz', kind: 'length', min: -100, max: 100 },
    suctionVelocity: { symbol: 'V1', ...SPEED },
    dischargeVelocity: { symbol: 'V2', ...SPEED },
    density: DENSITY,
  },
  result: { symbol: 'H', kind: 'head' },
  source: SOURCE,
  kernel: (x) => {
    const pressures = (x.dischargePressure + x.suctionVacuum) / (x.density * STANDARD_GRAVITY);
    const velocities = (x.dischargeVelocity ** 2 - x.suctionVelocity ** 2) / (2 * STANDARD_GRAVITY);
    return pressures + x.gaugeHeight + velocities;
  },
};
