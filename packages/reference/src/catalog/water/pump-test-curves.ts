/**
 * The system curves H = k·Q² on which pool pumps are rated: A and B of California Title 20, C of the federal test.
 */
import { quantity, type Source } from '@firstfire/engine';

const GPM = quantity.US_GALLON / quantity.MINUTE;

export const PUMP_TEST_SOURCE: Source = {
  document: '10 CFR 431 subpart Y, appendices B and C (curve C); California Title 20, 1604(g) (A and B)',
  at: 'coefficients',
  known: 'from memory',
};

/** k in m/(m3/s)²; printed as ft over gpm². */
export const PUMP_TEST_CURVES = {
  A: (0.0167 * quantity.FOOT) / GPM ** 2,
  B: (0.05 * quantity.FOOT) / GPM ** 2,
  C: (0.0082 * quantity.FOOT) / GPM ** 2,
} as const;

/** Head (m) that a rating system takes at a flow (m3/s). Example: curve C at 50 gpm → 20.5 ft. */
export function pumpTestHead(curve: keyof typeof PUMP_TEST_CURVES, flow: number): number {
  return PUMP_TEST_CURVES[curve] * flow * flow;
}
