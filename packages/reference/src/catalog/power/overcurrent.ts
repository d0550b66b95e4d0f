/** Breakers and fuses: the ratings that are standard, and the ground that goes with each. */
import { quantity, type Source } from '@firstfire/engine';

export const BREAKER_SOURCE: Source = {
  document: 'National Electrical Code',
  at: '240.6(A), standard ampere ratings',
  known: 'from memory',
};

/** A, rising. */
export const BREAKERS: readonly number[] = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400,
];

export const GROUND_SOURCE: Source = {
  document: 'National Electrical Code',
  at: 'Table 250.122, copper',
  known: 'read in a public copy',
};

export interface GroundRow {
  /** Largest overcurrent device, A. */
  readonly breaker: number;
  /** `12`, `1/0`, `250 kcmil`. */
  readonly size: string;
  /** m². */
  readonly area: number;
}

const gauge = (breaker: number, n: number): GroundRow => ({
  breaker,
  size: quantity.gaugeText(n),
  area: quantity.gaugeArea(n),
});

/** Copper equipment grounds, by rising breaker. Gauge numbers 0, −1, −2, −3 are 1/0 to 4/0. */
export const GROUNDS: readonly GroundRow[] = [
  gauge(15, 14),
  gauge(20, 12),
  gauge(60, 10),
  gauge(100, 8),
  gauge(200, 6),
  gauge(300, 4),
  gauge(400, 3),
  gauge(500, 2),
  gauge(600, 1),
  gauge(800, 0),
  gauge(1000, -1),
  gauge(1200, -2),
  gauge(1600, -3),
  { breaker: 2000, size: '250 kcmil', area: 250_000 * quantity.CIRCULAR_MIL },
];

/** The row of the smallest listed device at or above this one (A); none above the table. */
export function groundOfBreaker(breaker: number): GroundRow | undefined {
  return GROUNDS.find((row) => breaker <= row.breaker);
}
