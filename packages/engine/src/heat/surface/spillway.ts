/**
 * A spillway or waterfall: a sheet of falling water that evaporates and cools as an upright surface does.
 *
 *     area          A = faces·width·fall         two faces in the open, one on a wall
 *     air over it   v + ⅔·√(2·g·fall)            the mean speed of the falling sheet joins the wind
 *
 * The balance applies the same evaporation and convection per square metre to this area at this speed. Splash is not
 * counted; a sheet that breaks up early loses more.
 *
 * Source: *common practice, no source* for treating the sheet as more surface; the fall speed is mechanics, its mean
 * over the height two thirds of the last.
 * Range: width 0 to 50 m, fall 0 to 10 m.
 * Errors: values outside are issues of the balance.
 *
 * Worked example: 1.5 m wide, 0.4 m fall, two faces → 1.2 m2 at 1.87 m/s over the wind.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';

export interface Spillway {
  /** m. */
  readonly width: number;
  /** Height the water falls, m. */
  readonly fall: number;
  /** 2 where air has access to both sides. */
  readonly faces: 1 | 2;
  /** Share of the time it runs, 0 to 1. */
  readonly running: number;
}

/** Wet area of the sheet, m2. */
export function spillwayArea(x: Spillway): number {
  return x.faces * x.width * x.fall;
}

/** Mean speed of the falling water, m/s. */
export function spillwaySpeed(x: Spillway): number {
  return (2 / 3) * Math.sqrt(2 * STANDARD_GRAVITY * x.fall);
}
