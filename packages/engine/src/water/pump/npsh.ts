/**
 * Net positive suction head available: how far the water at a pump's inlet stands from boiling.
 *
 *     NPSHa = (p,atm − p,vapour)/(ρ·g) − lift − h,suction
 *
 * Warm spa water and altitude both eat it: at 40 °C and 1,600 m about 2.5 m are gone before the pipe begins.
 *
 * Source: Hydraulic Institute definition (from memory); Crane TP-410, Example 7-32.
 * Range: see the variables; a negative result is a pump that cannot draw.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 101,325 Pa, 2,339 Pa (20 °C), 998.2 kg/m3, lift 1 m, loss 2 m → 7.11 m.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';
import { DENSITY } from '../variables.ts';

const SOURCE: Source = { document: 'Hydraulic Institute, definition of NPSH', known: 'from memory' };

export interface PumpSuction {
  /** Absolute pressure on the water surface, Pa. */
  readonly surfacePressure: number;
  /** Vapour pressure of the water, Pa. */
  readonly vapourPressure: number;
  /** ρ, kg/m3. */
  readonly density: number;
  /** Height of the pump's inlet over the water surface, m; negative when flooded. */
  readonly lift: number;
  /** Head lost between surface and inlet, m. */
  readonly suctionLoss: number;
}

/** NPSH available, m. */
export const npshAvailable: Formula<PumpSuction> = {
  id: 'water.npsh-available',
  equation: 'NPSHa = (p − pv)/(ρ·g) − z − h',
  inputs: {
    surfacePressure: { symbol: 'p', kind: 'absolute-pressure', min: 2e4, max: 1e6 },
    vapourPressure: { symbol: 'pv', kind: 'absolute-pressure', min: 0, max: 1.1e5 },
    density: DENSITY,
    lift: { symbol: 'z', kind: 'length', min: -100, max: 100 },
    suctionLoss: { symbol: 'h', kind: 'head', min: 0, max: 1000 },
  },
  result: { symbol: 'NPSHa', kind: 'head' },
  source: SOURCE,
  kernel: (x) =>
    (x.surfacePressure - x.vapourPressure) / (x.density * STANDARD_GRAVITY) - x.lift - x.suctionLoss,
};
