/**
 * Cracks of a room as one opening, from the air changes a test told of it.
 *
 *     Q4 = 20·ACH·V·(4/50)^0.65      A = Q4/(Cd·√(2·4 Pa/ρ))
 *
 * Air changes of a blower door at 50 Pa are about 20 times those of a usual hour, and flow through cracks goes as the
 * pressure to the power 0.65. The area is the one that passes the same air at 4 Pa; at ten times that it is three tenths too
 * small, on the safe side.
 *
 * Source: the rule of twenty and the exponent, common practice, no source; the orifice as `room-pull.ts`.
 * Range: 0.05 to 50 air changes an hour, 1 to 10⁶ m3, air 0.5 to 1.6 kg/m3. Errors: range issues of `evaluate`.
 * Worked example: 0.5 air changes of 100 m3, air 1.2 kg/m3 → 0.034 m2.
 */
import { HOUR } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';
import { ORIFICE_COEFFICIENT } from './room-pull.ts';

export const LEAK_AREA_SOURCE: Source = {
  document: 'Trade rule of thumb',
  known: 'common practice, no source',
};

/** Air changes at 50 Pa over those of a usual hour. */
const BLOWER_DOOR = 20;
const BLOWER_PRESSURE = 50;
const REFERENCE_PRESSURE = 4;
const CRACK_EXPONENT = 0.65;

export interface TestedRoom {
  /** ACH, air changes an hour. */
  readonly airChanges: number;
  /** V, m3. */
  readonly volume: number;
  /** ρ of the outdoor air, kg/m3. */
  readonly density: number;
}

/** Area of a sharp-edged opening that leaks as the room does, m2. */
export const leakArea: Formula<TestedRoom> = {
  id: 'air.leak-area',
  equation: 'A = 20·ACH·V·(4/50)^0.65/(Cd·√(2·4 Pa/ρ))',
  inputs: {
    airChanges: { symbol: 'ACH', kind: 'ratio', min: 0.05, max: 50 },
    volume: { symbol: 'V', kind: 'volume', min: 1, max: 1e6 },
    density: { symbol: 'ρ', kind: 'density', min: 0.5, max: 1.6 },
  },
  result: { symbol: 'A', kind: 'area' },
  source: LEAK_AREA_SOURCE,
  kernel: ({ airChanges, volume, density }) => {
    const atFifty = (BLOWER_DOOR * airChanges * volume) / HOUR;
    const flow = atFifty * (REFERENCE_PRESSURE / BLOWER_PRESSURE) ** CRACK_EXPONENT;
    return flow / (ORIFICE_COEFFICIENT * Math.sqrt((2 * REFERENCE_PRESSURE) / density));
  },
};
