/**
 * Evaporation of an indoor pool by analogy of heat and mass transfer, with nobody in it and with swimmers.
 *
 *     E0 = max(35·ρw·(ρr − ρw)^⅓·(Ww − Wr), 5e-5·(pw − pr))          kg/(m2 h), Pa
 *     E/E0 = 1.9 − 21·(ρr − ρw) + 5.3·N        from 0.05 swimmers a m2; straight from 1 at none to there
 *
 * ρ is the mass of *dry* air in a cubic metre, saturated at the water's temperature (w) and in the room (r), and W the
 * humidity ratio. The first term is natural convection and is nothing where the room's air is the lighter; the second
 * is the slight draught of any room.
 *
 * Where the code departs from its source: where the air holds more vapour than the water gives off, which the author
 * does not cover, the draught term alone is used and is negative (condensation).
 *
 * How sources disagree: with moist-air densities the first term comes out about a fifth lower; the author's own figures
 * need dry-air densities. Constants in inch-pound print (290 and 0.0346) are 0.2 % off these.
 *
 * Source: Shah (2012, 2014), ASHRAE Transactions 118(2) SA-12-011 and 120(2) SE-14-001 (constants from memory); Shah
 * (2013), ASHRAE Transactions 119(2) DE-13-040 for swimmers, mean absolute deviation 18 % on four pools.
 * Range: still indoor air (under 0.15 m/s), water 0 to 50 °C, up to 1 swimmer a m2.
 * Errors: values outside are issues of `evaluate`; a ratio under 1, which swimmers cannot have, is `no-solution` (a hot
 * spa in a cool room, ρr − ρw above about 0.05). The plain functions check nothing else.
 *
 * Worked example: water 28 °C, air 29 °C at 60 %, sea level, nobody → 0.082 kg/(m2 h).
 */
import { dryAirDensityAt, humidityRatioAt } from '../../../properties/index.ts';
import { HOUR } from '../../../quantity/index.ts';
import { type Formula, type Source, traced, type Variable } from '../../../trace/index.ts';
import { PRESSURE_AT_POOL, WATER_AND_AIR, type WaterAndAir } from '../variables.ts';
import { vapourAtWater, vapourInAir } from './vapour.ts';

const UNOCCUPIED: Source = {
  document: 'Shah (2012, 2014), ASHRAE Transactions 118(2) SA-12-011 and 120(2) SE-14-001',
  at: 'E0 = max(35·ρw·(ρr − ρw)^⅓·(Ww − Wr), 0.00005·(pw − pr))',
  known: 'from memory',
};

const OCCUPIED: Source = {
  document: 'Shah (2013), ASHRAE Transactions 119(2) DE-13-040',
  at: 'E/E0 = 1.9 − 21·(ρr − ρw) + 5.3·N',
  known: 'read in a public copy',
};

/** Slight draught of any room, kg/(m2 s Pa). */
export const DRAUGHT = 5e-5 / HOUR;
const NATURAL = 35 / HOUR;

/** Swimmers a square metre below which the ratio is drawn straight to 1. */
const FEW = 0.05;

/** What the correlation needs of the water and of the room's air. */
export interface RoomOverWater {
  /** Tw, K. */
  readonly waterTemperature: number;
  /** Ta, K. */
  readonly airTemperature: number;
  /** pa, vapour in the air, Pa. */
  readonly vapourPressure: number;
  /** P, Pa. */
  readonly pressure: number;
}

/** Density of dry air in the room less that at the water (kg/m3), of the vapour pressure at the water (Pa). */
export function buoyancy(x: RoomOverWater, atWater: number): number {
  return (
    dryAirDensityAt(x.airTemperature, x.vapourPressure, x.pressure) -
    dryAirDensityAt(x.waterTemperature, atWater, x.pressure)
  );
}

/** Evaporation (kg/(m2 s)) from a quiet indoor pool, of the vapour pressure at the water (Pa). */
export function shahMass(x: RoomOverWater, atWater: number): number {
  const draught = DRAUGHT * (atWater - x.vapourPressure);
  const lift = buoyancy(x, atWater);
  if (draught <= 0 || lift <= 0) return draught;
  const density = dryAirDensityAt(x.waterTemperature, atWater, x.pressure);
  const vapour = humidityRatioAt(atWater, x.pressure) - humidityRatioAt(x.vapourPressure, x.pressure);
  return Math.max(NATURAL * density * Math.cbrt(lift) * vapour, draught);
}

/**
 * Evaporation with swimmers over that without, of the buoyancy (kg/m3) and swimmers a m2; NaN where it would be under 1,
 * as over a hot spa in a cool room: the correlation was not made for so much buoyancy.
 */
export function occupancyRatio(lift: number, swimmers: number): number {
  const full = 1.9 - 21 * lift + 5.3 * Math.max(swimmers, FEW);
  if (full < 1) return Number.NaN;
  return swimmers >= FEW ? full : 1 + ((full - 1) * swimmers) / FEW;
}

export interface QuietIndoorPool extends WaterAndAir {
  /** P, Pa. */
  readonly pressure: number;
}

/** Evaporation of an indoor pool with nobody in it, kg/(m2 s). */
export const shahQuietEvaporation: Formula<QuietIndoorPool> = {
  id: 'heat.evaporation-shah-quiet',
  equation: 'E0 = max(35·ρw·(ρr − ρw)^⅓·(Ww − Wr), 5e-5·(pw − pr))',
  inputs: { ...WATER_AND_AIR, pressure: PRESSURE_AT_POOL },
  result: { symbol: 'E0', kind: 'mass-flux' },
  source: UNOCCUPIED,
  kernel: (x, recorder) => {
    const atWater = vapourAtWater(x, recorder);
    return shahMass({ ...x, vapourPressure: vapourInAir(x, recorder) }, atWater);
  },
};

export interface IndoorPool extends QuietIndoorPool {
  /** N, persons a m2 of water (1/m2). */
  readonly swimmers: number;
}

const swimmers: Variable = { symbol: 'N', kind: 'ratio', min: 0, max: 1 };

/** Evaporation of an indoor pool with or without swimmers, kg/(m2 s). */
export const shahEvaporation: Formula<IndoorPool> = {
  id: 'heat.evaporation-shah',
  equation: 'E = E0·(1.9 − 21·(ρr − ρw) + 5.3·N)',
  inputs: { ...WATER_AND_AIR, pressure: PRESSURE_AT_POOL, swimmers },
  result: { symbol: 'E', kind: 'mass-flux' },
  source: OCCUPIED,
  kernel: (x, recorder) => {
    const quiet = traced(shahQuietEvaporation, x, recorder);
    if (x.swimmers === 0) return quiet;
    const lift = buoyancy({ ...x, vapourPressure: vapourInAir(x) }, vapourAtWater(x));
    return quiet * occupancyRatio(lift, x.swimmers);
  },
};
