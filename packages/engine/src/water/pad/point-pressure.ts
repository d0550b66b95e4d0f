/**
 * Gauge pressure at a point of a pad from its head.
 *
 *     p = ρ·(g·(H − z) − V²/2)
 *
 * H is the total head over the datum, z the height of the tap, V the velocity that passes the tap; a tap on a tank or
 * on a gauge board feels none.
 *
 * Source: energy equation. Range: heads and heights to 1 km. Errors: values outside the range are issues of
 * `evaluate`.
 *
 * Worked example: H = 10 m, z = 1 m, V = 2 m/s, 997 kg/m3 → 86.0 kPa.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { Formula } from '../../trace/index.ts';
import { DENSITY } from '../variables.ts';

export interface PointOfPad {
  /** H, m. */
  readonly head: number;
  /** z, m. */
  readonly elevation: number;
  /** V, m/s. */
  readonly velocity: number;
  /** ρ, kg/m3. */
  readonly density: number;
}

/** p, Pa. */
export const pointPressure: Formula<PointOfPad> = {
  id: 'water.point-pressure',
  equation: 'p = ρ·(g·(H − z) − V²/2)',
  inputs: {
    head: { symbol: 'H', kind: 'head', min: -1000, max: 1000 },
    elevation: { symbol: 'z', kind: 'length', min: -1000, max: 1000 },
    velocity: { symbol: 'V', kind: 'velocity', min: -50, max: 50 },
    density: DENSITY,
  },
  result: { symbol: 'p', kind: 'pressure' },
  source: { document: 'Energy equation of a flowing liquid', known: 'physics' },
  kernel: (x) => x.density * (STANDARD_GRAVITY * (x.head - x.elevation) - (x.velocity * x.velocity) / 2),
};
