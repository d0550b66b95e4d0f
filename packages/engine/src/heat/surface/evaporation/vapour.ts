/** Vapour pressures on both sides of evaporation, recorded as steps of the working. */
import { saturationPressure, vapourPressure, waterLatentHeat } from '../../../properties/index.ts';
import { type Recorder, traced } from '../../../trace/index.ts';
import type { WaterAndAir } from '../variables.ts';

/** pw at the water's temperature, Pa. */
export function vapourAtWater(x: WaterAndAir, recorder?: Recorder): number {
  return traced(saturationPressure, { temperature: x.waterTemperature }, recorder);
}

/** pa in the air, Pa. */
export function vapourInAir(x: WaterAndAir, recorder?: Recorder): number {
  const { airTemperature: temperature, relativeHumidity } = x;
  return traced(vapourPressure, { temperature, relativeHumidity }, recorder);
}

/** What drives evaporation, pw − pa, Pa; below zero water condenses on the pool. */
export function vapourDifference(x: WaterAndAir, recorder?: Recorder): number {
  return vapourAtWater(x, recorder) - vapourInAir(x, recorder);
}

/** Latent heat at the water's temperature, J/kg. */
export function latentHeatAtWater(x: WaterAndAir, recorder?: Recorder): number {
  return traced(waterLatentHeat, { temperature: x.waterTemperature }, recorder);
}
