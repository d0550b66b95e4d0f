/**
 * A burner that cannot get what it wants: it takes its full flow while its inlet stands at its manifold pressure or
 * above, and less by the square root of the pressure below, as its orifices do.
 *
 * Full flow is held by a steep line (a ten-thousandth of the full flow for each manifold pressure in excess) rather
 * than a step, so that the law has a slope everywhere.
 *
 * Source: orifice relation (physics); manifold pressures of 3.5 and 10 in w.c. are *common practice, no source*.
 */
import type { CustomLaw } from '../../numerics/index.ts';
import { INCH_OF_WATER } from '../../quantity/index.ts';
import type { FuelName } from '../fuel.ts';

/** Usual manifold pressure by fuel, gauge, Pa. */
export const MANIFOLD_PRESSURE: Readonly<Record<FuelName, number>> = {
  natural: 3.5 * INCH_OF_WATER,
  propane: 10 * INCH_OF_WATER,
};

const STEEPNESS = 1e4;

export interface Burner {
  /** Full flow, standard m3/s. */
  readonly flow: number;
  /** Gauge, Pa. */
  readonly manifoldPressure: number;
  /** Outside pressure at its height, Pa. */
  readonly outside: number;
  /** Elevation factor at its height. */
  readonly factor: number;
}

/** Loss of potential from the burner's inlet to the air, against its flow. */
export function burnerLaw({ flow, manifoldPressure, outside, factor }: Burner): CustomLaw {
  const gaugeAt = (q: number): number =>
    q <= flow ? manifoldPressure * (q / flow) ** 2 : manifoldPressure * (1 + (STEEPNESS * (q - flow)) / flow);
  const gaugeSlope = (q: number): number =>
    q <= flow ? (2 * manifoldPressure * q) / flow ** 2 : (STEEPNESS * manifoldPressure) / flow;
  return {
    type: 'custom',
    expectedFlow: flow,
    loss: (q) => {
      const gauge = gaugeAt(Math.abs(q));
      return Math.sign(q) * factor * gauge * (2 * outside + gauge);
    },
    slope: (q) => {
      const size = Math.abs(q);
      return 2 * factor * (outside + gaugeAt(size)) * gaugeSlope(size);
    },
  };
}
