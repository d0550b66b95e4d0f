/**
 * Height in a gas system. The weight of a standing column of gas changes its absolute pressure by e^(−g·z/(Rs·T));
 * the air outside changes by its own weight, and a gauge shows the difference. Natural gas, lighter than air, gains
 * gauge pressure upstairs; propane loses it.
 *
 * With φ = p²·e^(2g·z/(Rs·T)) the equation of isothermal flow in a sloping pipe keeps the form of a level one:
 *
 *     φ1 − φ2 = w · (loss of p² in the level pipe),   w = mean of e^(2g·z/(Rs·T)) along the pipe
 *
 * so that one potential serves the whole network, loops and all.
 *
 * Source: barometric formula; isothermal flow equation with elevation (both physics).
 * Worked example: 10 m up, gravity 0.60, 15 °C → +47 Pa at the gauge.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { GasState } from './gas-state.ts';

type Column = Pick<GasState, 'gasConstant' | 'temperature'>;

/** e^(2g·z/(Rs·T)): potential over pressure squared at a height (m). */
export function elevationFactor(gas: Column, height: number): number {
  return Math.exp((2 * STANDARD_GRAVITY * height) / (gas.gasConstant * gas.temperature));
}

/** Mean of the factor between two heights (m) of a straight pipe. */
export function meanElevationFactor(gas: Column, from: number, to: number): number {
  const rate = (2 * STANDARD_GRAVITY) / (gas.gasConstant * gas.temperature);
  const exponent = rate * (to - from);
  const mean = exponent === 0 ? 1 : Math.expm1(exponent) / exponent;
  return mean * Math.exp(rate * from);
}
