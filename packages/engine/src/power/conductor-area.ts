/**
 * Cross-section that a drop asks for, by the resistivity of copper.
 *
 *     A = k·K·I·L/ΔV        K = 12.9 ohm circular mils a foot (2.145·10⁻⁸ ohm m), copper at 75 °C
 *
 * How sources disagree: the table's own figures give 12.6 (solid) to 12.9 (stranded, whose wires are a little longer than
 * their conductor). 12.9 is the safe end of them and is followed.
 *
 * Source: electricianmath.com, voltage drop; a second teaching page forms K from R and the circular mils.
 * Range: 0 to 1000 A, up to 10 km, 0.01 to 1000 V. Errors: range issues of `evaluate`.
 * Worked example: 16 A over 100 ft at 120 V with 3 % (3.6 V), one phase → 11 467 circular mils, so 8 AWG.
 */
import { CIRCULAR_MIL, FOOT } from '../quantity/constants.ts';
import type { Formula, Source } from '../trace/index.ts';
import { phaseFactor } from './voltage-drop.ts';

/** K of copper at 75 °C, ohm m. */
export const COPPER_K = (12.9 * CIRCULAR_MIL) / FOOT;

const SOURCE: Source = {
  document: 'electricianmath.com, voltage drop',
  at: 'K of copper, 12.9 ohm circular mils a foot',
  known: 'read in a public copy',
};

/** K of any metal, ohm m, from the resistance of a length (ohm, m) and its cross-section (m²). */
export function conductorConstant(resistance: number, length: number, area: number): number {
  return (resistance * area) / length;
}

export interface WantedDrop {
  /** A. */
  readonly current: number;
  /** One way, m. */
  readonly length: number;
  /** V. */
  readonly allowedDrop: number;
  /** 1 or 3. */
  readonly phases: number;
}

/** Least cross-section of copper, m². */
export const areaForDrop: Formula<WantedDrop> = {
  id: 'power.area-for-drop',
  equation: 'A = k·K·I·L/ΔV, k = 2 (1~), √3 (3~)',
  inputs: {
    current: { symbol: 'I', kind: 'current', min: 0, max: 1000 },
    length: { symbol: 'L', kind: 'length', min: 0, max: 10_000 },
    allowedDrop: { symbol: 'ΔV', kind: 'voltage', min: 0.01, max: 1000 },
    phases: { symbol: 'n', kind: 'ratio', min: 1, max: 3 },
  },
  result: { symbol: 'A', kind: 'wire-size' },
  source: SOURCE,
  kernel: (x) => (phaseFactor(x.phases) * COPPER_K * x.current * x.length) / x.allowedDrop,
};
