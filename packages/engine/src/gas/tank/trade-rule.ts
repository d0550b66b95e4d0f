/**
 * What a propane tank boils off in winter, by the trade's rule.
 *
 *     heat = D · L · K(fill) · (1 + t/20)      Btu/h, with D and L in inches, t in °F
 *
 * K is 45, 60, 70, 80, 90, 100 at 10, 20, 30, 40, 50, 60 % of liquid by volume, straight lines between. It goes as
 * the wetted part of the shell, within 2 % (4 % at a tenth full); the last line is continued to 80 %, where it still does. The factor of
 * temperature is a straight line through the rule's table (0.25 at −15 °F to 2.00 at +20 °F), nothing at −20 °F, and
 * is not stretched beyond +40 °F.
 *
 * A rule for steady draw in still weather: snow on the shell and a burning heater all night give less, short spells
 * give more. Its zero at −20 °F stands for the pressure that the first regulator needs.
 *
 * Source: *from memory*, as trade handbooks print it; *common practice, no source*.
 * Range: diameter 0.3 to 3 m, length 0.5 to 20 m, fill 10 to 80 %, air −20 to +40 °F. Errors: range issues.
 *
 * Worked example: 37 in by 120 in, 40 % full, 0 °F → 37·120·80 = 355,200 Btu/h.
 */
import { BTU, HOUR, INCH } from '../../quantity/index.ts';
import type { Formula } from '../../trace/index.ts';

export interface TankInWinter {
  /** Outside diameter, m. */
  readonly diameter: number;
  /** Overall, m. */
  readonly length: number;
  /** Liquid over water volume. */
  readonly fill: number;
  /** K. */
  readonly airTemperature: number;
}

/** K at 10 % steps of fill from 10 %. */
const FILL_FACTORS = [45, 60, 70, 80, 90, 100] as const;
const FAHRENHEIT_ZERO = 459.67 / 1.8;
const fahrenheit = (kelvin: number): number => (kelvin - FAHRENHEIT_ZERO) * 1.8;
const kelvin = (f: number): number => FAHRENHEIT_ZERO + f / 1.8;

/** The rule's K of a fill, straight lines between its steps and on beyond 60 %. */
export function fillFactor(fill: number): number {
  const step = Math.min(Math.max(Math.floor(fill * 10 - 1 + 1e-9), 0), FILL_FACTORS.length - 2);
  const below = FILL_FACTORS[step] ?? Number.NaN;
  const above = FILL_FACTORS[step + 1] ?? Number.NaN;
  return below + (above - below) * (fill * 10 - 1 - step);
}

/** Heat input (W, gross, as fuel) that a tank can supply. */
export const tankVaporisation: Formula<TankInWinter> = {
  id: 'gas.tank-vaporisation',
  equation: 'P = D·L·K·(1 + t/20)',
  inputs: {
    diameter: { symbol: 'D', kind: 'diameter', min: 0.3, max: 3 },
    length: { symbol: 'L', kind: 'length', min: 0.5, max: 20 },
    fill: { symbol: 'x', kind: 'ratio', min: 0.1, max: 0.8 },
    airTemperature: { symbol: 't', kind: 'temperature', min: kelvin(-20) - 1e-9, max: kelvin(40) + 1e-9 },
  },
  result: { symbol: 'P', kind: 'heat-rate' },
  source: { document: 'Trade rule of thumb', at: 'D·L·K', known: 'from memory' },
  kernel: (x) => {
    const size = (x.diameter / INCH) * (x.length / INCH);
    const warmth = Math.max(1 + fahrenheit(x.airTemperature) / 20, 0);
    return (size * fillFactor(x.fill) * warmth * BTU) / HOUR;
  },
};
