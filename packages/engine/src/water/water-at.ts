/**
 * The properties of pool water that flow and heat balances ask for, at one temperature.
 *
 * Source: `properties/water` (IAPWS). Range: 0 to 100 °C. Errors: a temperature outside it is an issue.
 * Worked example: 25 °C → 997.05 kg/m3, 0.893e-6 m2/s, 4181 J/(kg K), 3170 Pa.
 */
import {
  densityOfWater,
  specificHeatOfWater,
  vapourPressureOfWater,
  viscosityOfWater,
  waterDensity,
} from '../properties/index.ts';
import { fail, ok, type Result, rangeIssues } from '../trace/index.ts';

export interface WaterProperties {
  /** K. */
  readonly temperature: number;
  /** ρ, kg/m3. */
  readonly density: number;
  /** ν, m2/s. */
  readonly viscosity: number;
  /** c, J/(kg K). */
  readonly specificHeat: number;
  /** Pa. */
  readonly vapourPressure: number;
}

/** Properties at a temperature (K). */
export function waterAt(temperature: number): Result<WaterProperties> {
  const issues = rangeIssues(waterDensity, { temperature });
  return issues.length > 0 ? fail(...issues) : ok(propertiesAt(temperature));
}

/** The same without its check. */
export function propertiesAt(temperature: number): WaterProperties {
  const density = densityOfWater(temperature);
  return {
    temperature,
    density,
    viscosity: viscosityOfWater(temperature) / density,
    specificHeat: specificHeatOfWater(temperature),
    vapourPressure: vapourPressureOfWater(temperature),
  };
}
