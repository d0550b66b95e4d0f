/** Copper conductors: resistance and ampacity by gauge. */
import { quantity, type Source } from '@firstfire/engine';

export interface CopperConductor {
  /** `12`, `1/0`. */
  readonly gauge: string;
  /** Direct current at 75 °C, ohm a metre; solid up to 8 AWG, stranded above. */
  readonly resistance: number;
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
  gauge: string,
  perKft: number,
  ampacity: readonly [number, number, number],
  breakerMost?: number,
];

const ROWS: readonly Row[] = [
  ['14', 3.07, [15, 20, 25], 15],
  ['12', 1.93, [20, 25, 30], 20],
  ['10', 1.21, [30, 35, 40], 30],
  ['8', 0.764, [40, 50, 55]],
  ['6', 0.491, [55, 65, 75]],
  ['4', 0.308, [70, 85, 95]],
  ['3', 0.245, [85, 100, 115]],
  ['2', 0.194, [95, 115, 130]],
  ['1', 0.154, [110, 130, 145]],
  ['1/0', 0.122, [125, 150, 170]],
  ['2/0', 0.0967, [145, 175, 195]],
];

export const COPPER: readonly CopperConductor[] = ROWS.map(([gauge, perKft, ampacity, breakerMost]) => ({
  gauge,
  resistance: perKft / (1000 * quantity.FOOT),
  ampacity,
  ...(breakerMost === undefined ? {} : { breakerMost }),
}));

/** The conductor whose cross-section (m2) is that of its gauge, within half a gauge. */
export function copperOfArea(area: number): CopperConductor | undefined {
  const number = Math.round(quantity.gaugeOf(area));
  const gauge = number > 0 ? String(number) : `${1 - number}/0`;
  return COPPER.find((one) => one.gauge === gauge);
}

/** Ampacity by the temperature of the insulation (K): the column at or below it. */
export function tableAmpacity({ ampacity }: CopperConductor, insulation: number): number | undefined {
  const column = [333.15, 348.15, 363.15].findLastIndex((temperature) => insulation >= temperature - 0.01);
  return column < 0 ? undefined : ampacity[column];
}
