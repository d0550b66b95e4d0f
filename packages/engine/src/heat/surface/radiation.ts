/**
 * Heat exchanged by radiation: long waves with the sky and what stands about, short waves from the sun.
 *
 *     q_lw  = ε·σ·(Tw⁴ − F·Tsky⁴ − (1 − F)·Ta⁴)       F the share of the sky the water sees
 *     q_sun = α·(1 − shade)·G
 *
 * Walls, trees and a roof are taken at the air's temperature; indoors F is 0.
 *
 * How sources disagree: emissivity 0.95 to 0.96; absorption 0.75 to 0.85 (US DOE, outdoor pools), 0.85 for a light and
 * 0.90 for a dark lining (ISO/TR 12596). 0.95 and 0.85 are taken where nothing is said.
 *
 * Source: Stefan's law; Duffie and Beckman; ISO/TR 12596:1995 (from memory).
 * Range: water 0 to 50 °C, sky −100 to 60 °C, sun 0 to 1400 W/m2, shares 0 to 1.
 * Errors: values outside are issues of `evaluate`; the plain functions check nothing.
 *
 * Worked example: water 27 °C under a sky of 2 °C, F = 1 → 128 W/m2; 500 W/m2 of sun, a fifth shaded → 340 W/m2.
 */
import type { Formula, Source, Variable } from '../../trace/index.ts';
import { AIR_TEMPERATURE_AT_POOL, WATER_TEMPERATURE } from './variables.ts';

/** σ, W/(m2 K4). */
export const STEFAN_BOLTZMANN = 5.670374419e-8;
/** ε of water for long waves. */
export const WATER_EMISSIVITY = 0.95;
/** Share of the sun on the water that it keeps, by lining. */
export const SOLAR_ABSORPTION = { light: 0.85, dark: 0.9 } as const;

const STEFAN: Source = { document: 'Law of Stefan and Boltzmann', known: 'physics' };
const ISO: Source = { document: 'ISO/TR 12596:1995', at: 'solar absorption', known: 'from memory' };

const share = (symbol: string): Variable => ({ symbol, kind: 'ratio', min: 0, max: 1 });

/** How the water looks to long waves. */
export interface LongWaveOptics {
  /** F, share of the sky the water sees. */
  readonly skyView: number;
  /** ε of water. */
  readonly emissivity: number;
}

export interface LongWaveState {
  /** Tw, K. */
  readonly waterTemperature: number;
  /** Ta, K, for what hides the sky. */
  readonly airTemperature: number;
  /** Tsky, K. */
  readonly skyTemperature: number;
}

/** Net heat (W/m2) the water radiates away: `longWave` without its checks. */
export function longWaveHeat(optics: LongWaveOptics, x: LongWaveState): number {
  const seen = optics.skyView * fourth(x.skyTemperature) + (1 - optics.skyView) * fourth(x.airTemperature);
  return optics.emissivity * STEFAN_BOLTZMANN * (fourth(x.waterTemperature) - seen);
}

function fourth(t: number): number {
  const square = t * t;
  return square * square;
}

/** Net long-wave radiation from the water, W/m2. */
export const longWave: Formula<LongWaveOptics & LongWaveState> = {
  id: 'heat.long-wave',
  equation: 'q = ε·σ·(Tw⁴ − F·Tsky⁴ − (1 − F)·Ta⁴)',
  inputs: {
    waterTemperature: WATER_TEMPERATURE,
    airTemperature: AIR_TEMPERATURE_AT_POOL,
    skyTemperature: { symbol: 'Tsky', kind: 'temperature', min: 173.15, max: 333.15 },
    skyView: share('F'),
    emissivity: share('ε'),
  },
  result: { symbol: 'q', kind: 'heat-flux' },
  source: STEFAN,
  kernel: (x) => longWaveHeat(x, x),
};

/** How the water takes the sun. */
export interface SolarOptics {
  /** α. */
  readonly absorption: number;
  /** Share of the sun kept off by what stands about. */
  readonly shade: number;
}

export interface SunOnWater extends SolarOptics {
  /** G on the horizontal, W/m2. */
  readonly sun: number;
}

/** Sun (W/m2) the water keeps of what falls on it (W/m2): `absorbedSun` without its checks. */
export function absorbedSunHeat(optics: SolarOptics, sun: number): number {
  return optics.absorption * (1 - optics.shade) * sun;
}

/** Sun the water keeps, W/m2. */
export const absorbedSun: Formula<SunOnWater> = {
  id: 'heat.absorbed-sun',
  equation: 'q = α·(1 − shade)·G',
  inputs: {
    sun: { symbol: 'G', kind: 'heat-flux', min: 0, max: 1400 },
    absorption: share('α'),
    shade: share('shade'),
  },
  result: { symbol: 'q', kind: 'heat-flux' },
  source: ISO,
  kernel: (x) => absorbedSunHeat(x, x.sun),
};
