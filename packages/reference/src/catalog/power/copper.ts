/** Copper conductors: resistance and ampacity by gauge. */
import { quantity, type Source } from '@firstfire/engine';

export interface CopperConductor {
  /** `12`, `1/0`. */
  readonly gauge: string;
  /** Cross-section by the geometry of the gauge, m². */
  readonly area: number;
  /** The same as the table rounds it. */
  readonly circularMils: number;
  /** Direct current at 75 °C, ohm a metre; solid up to 8 AWG, stranded above. */
  readonly resistance: number;
  /** The same of a stranded conductor. */
  readonly strandedResistance: number;
  /** Ampacity at 60, 75 and 90 °C insulation, up to three conductors, 30 °C air, A. */
  readonly ampacity: readonly [number, number, number];
  /** Largest overcurrent device of a small conductor, A. */
  readonly breakerMost?: number;
}

export const RESISTANCE_SOURCE: Source = {
  document: 'National Electrical Code',
  at: 'Chapter 9 Table 8, uncoated copper, direct current at 75 °C',
  known: 'read in a public copy',
};

export const AMPACITY_TABLE_SOURCE: Source = {
  document: 'National Electrical Code 2023',
  at: 'Table 310.16, copper',
  known: 'read in a public copy',
};

type Row = readonly [
  gauge: number,
  circularMils: number,
  perKft: number,
  strandedPerKft: number,
  ampacity: readonly [number, number, number],
  breakerMost?: number,
];

/** Gauge 0 and −1 are 1/0 and 2/0. */
const ROWS: readonly Row[] = [
  [14, 4110, 3.07, 3.14, [15, 20, 25], 15],
  [12, 6530, 1.93, 1.98, [20, 25, 30], 20],
  [10, 10_380, 1.21, 1.24, [30, 35, 40], 30],
  [8, 16_510, 0.764, 0.778, [40, 50, 55]],
  [6, 26_240, 0.491, 0.491, [55, 65, 75]],
  [4, 41_740, 0.308, 0.308, [70, 85, 95]],
  [3, 52_620, 0.245, 0.245, [85, 100, 115]],
  [2, 66_360, 0.194, 0.194, [95, 115, 130]],
  [1, 83_690, 0.154, 0.154, [110, 130, 145]],
  [0, 105_600, 0.122, 0.122, [125, 150, 170]],
  [-1, 133_100, 0.0967, 0.0967, [145, 175, 195]],
];

const KILOFOOT = 1000 * quantity.FOOT;

export const COPPER: readonly CopperConductor[] = ROWS.map(
  ([gauge, circularMils, perKft, strandedPerKft, ampacity, breakerMost]) => ({
    gauge: quantity.gaugeText(gauge),
    area: quantity.gaugeArea(gauge),
    circularMils,
    resistance: perKft / KILOFOOT,
    strandedResistance: strandedPerKft / KILOFOOT,
    ampacity,
    ...(breakerMost === undefined ? {} : { breakerMost }),
  }),
);

/** Gauges as they are written, for an issue that names what is possible. */
export const COPPER_GAUGES: readonly string[] = COPPER.map((one) => `${one.gauge} AWG`);

/** The conductor whose cross-section (m2) is that of its gauge, within half a gauge. */
export function copperOfArea(area: number): CopperConductor | undefined {
  const gauge = quantity.gaugeText(Math.round(quantity.gaugeOf(area)));
  return COPPER.find((one) => one.gauge === gauge);
}

/** Ampacity by the temperature of the insulation (K): the column at or below it. */
export function tableAmpacity({ ampacity }: CopperConductor, insulation: number): number | undefined {
  const column = [333.15, 348.15, 363.15].findLastIndex((temperature) => insulation >= temperature - 0.01);
  return column < 0 ? undefined : ampacity[column];
}
