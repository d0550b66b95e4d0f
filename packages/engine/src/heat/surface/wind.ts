/**
 * The wind that blows on the water, from the wind a weather station reports.
 *
 *     log law     v(z) = v(zs)·ln(z/z0)/ln(zs/z0)
 *     power law   v(z) = v(zs)·(z/zs)^n
 *     at the pool v = shelter·v(z)
 *
 * Airports measure at 10 m over short grass; the evaporation equations want the wind 0.3 m over the water. Over open
 * ground the log law alone takes 10 m wind to 0.40 of itself. Fences, houses and trees take the rest: US DOE's
 * published costs are met with 0.20 to 0.25 of the airport wind, a shelter of 0.5 to 0.6.
 *
 * How sources disagree: the power law with n = 1/7 gives 0.61 at the same place, because it was fitted aloft; the log
 * law is followed near the ground.
 *
 * Source: boundary-layer theory (log law); shelter by *common practice, no source*.
 * Range: wind 0 to 60 m/s, heights above the roughness, roughness 0.1 mm to 2 m, shelter 0 to 1.
 * Errors: values outside are issues; a height at or under the roughness gives `no-solution`.
 *
 * Worked example: 4 m/s at 10 m, roughness 0.03 m, 0.3 m over the water, shelter 0.5 → 0.79 m/s.
 */
import type { Formula, Source } from '../../trace/index.ts';

const LOG_LAW: Source = { document: 'Logarithmic wind profile', at: 'neutral air', known: 'physics' };
const POWER_LAW: Source = { document: 'Power law of the wind', known: 'common practice, no source' };

/** Height over the water at which the evaporation equations take the wind, m. */
export const HEIGHT_AT_WATER = 0.3;
/** Roughness of short grass, m (from memory). */
export const GRASS_ROUGHNESS = 0.03;

/** Share of the open wind that reaches the water, by what stands about the pool: *common practice, no source*. */
export const SHELTER = { open: 1, fenced: 0.6, garden: 0.5, walled: 0.3, indoors: 0 } as const;

const speed = { symbol: 'v', kind: 'velocity', min: 0, max: 60 } as const;
const stationHeight = { symbol: 'zs', kind: 'length', min: 0.1, max: 200 } as const;
const height = { symbol: 'z', kind: 'length', min: 0.01, max: 200 } as const;

export interface StationWind {
  /** m/s, at the station's height. */
  readonly stationWind: number;
  /** m above ground. */
  readonly stationHeight: number;
  /** m above the water at which the wind is wanted. */
  readonly height: number;
}

export interface RoughWind extends StationWind {
  /** z0, m. */
  readonly roughness: number;
}

/** Wind at another height by the log law, m/s. */
export const logWind: Formula<RoughWind> = {
  id: 'heat.wind-log-law',
  equation: 'v(z) = v(zs)·ln(z/z0)/ln(zs/z0)',
  inputs: {
    stationWind: speed,
    stationHeight,
    height,
    roughness: { symbol: 'z0', kind: 'length', min: 1e-4, max: 2 },
  },
  result: { symbol: 'v', kind: 'velocity' },
  source: LOG_LAW,
  kernel: (x) => {
    if (x.height <= x.roughness || x.stationHeight <= x.roughness) return Number.NaN;
    return (x.stationWind * Math.log(x.height / x.roughness)) / Math.log(x.stationHeight / x.roughness);
  },
};

export interface ShearedWind extends StationWind {
  /** n, 1/7 over open ground. */
  readonly exponent: number;
}

/** Wind at another height by the power law, m/s. */
export const powerWind: Formula<ShearedWind> = {
  id: 'heat.wind-power-law',
  equation: 'v(z) = v(zs)·(z/zs)^n',
  inputs: {
    stationWind: speed,
    stationHeight,
    height,
    exponent: { symbol: 'n', kind: 'ratio', min: 0, max: 1 },
  },
  result: { symbol: 'v', kind: 'velocity' },
  source: POWER_LAW,
  kernel: (x) => x.stationWind * (x.height / x.stationHeight) ** x.exponent,
};

export interface ShelteredWind extends RoughWind {
  /** Share of the open wind that reaches the water, 0 to 1. */
  readonly shelter: number;
}

/** Wind at the water behind shelter, m/s. */
export const windAtWater: Formula<ShelteredWind> = {
  id: 'heat.wind-at-water',
  equation: 'v = shelter·v(z)',
  inputs: { ...logWind.inputs, shelter: { symbol: 's', kind: 'ratio', min: 0, max: 1 } },
  result: { symbol: 'v', kind: 'velocity' },
  source: LOG_LAW,
  kernel: (x) => x.shelter * logWind.kernel(x),
};
