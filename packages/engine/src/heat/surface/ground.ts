/**
 * Heat lost through walls and floor.
 *
 *     Q = U·A·(Tw − T)       T the ground about a sunk pool, the air about one that stands free
 *
 * Small against the surface: about 1 % of an outdoor pool's losses in measured pools; more for a covered indoor pool
 * and for a free-standing spa, whose walls may lose more than its covered top.
 *
 * Source: Hahne and Kübler (1994), Solar Energy 53(1), and ISO/TR 12596 for its size (from memory); transmittances are
 * *common practice, no source*.
 * Range: U 0 to 20 W/(m2 K), area 0 to 10,000 m2, temperatures −50 to 60 °C.
 * Errors: values outside are issues of `evaluate`.
 *
 * Worked example: 100 m2 of wall and floor at 0.5 W/(m2 K), water 27 °C, ground 15 °C → 600 W.
 */
import type { Formula, Source } from '../../trace/index.ts';
import { AIR_TEMPERATURE_AT_POOL, WATER_TEMPERATURE } from './variables.ts';

const CONDUCTION: Source = { document: 'Steady conduction', at: 'Q = U·A·ΔT', known: 'physics' };

/** U of what is between the water and the ground or air, W/(m2 K). */
export const WALL_TRANSMITTANCE = {
  /** Concrete shell against earth; most of the resistance is the earth's. */
  sunk: 0.5,
  /** Liner on sand against earth. */
  liner: 0.6,
  /** Sheet wall in the open air. */
  'sheet-in-air': 5,
  /** Foamed spa shell in the open air. */
  'foamed-in-air': 0.6,
} as const;

export interface WallLoss {
  /** U, W/(m2 K). */
  readonly transmittance: number;
  /** A, m2. */
  readonly area: number;
  /** Tw, K. */
  readonly waterTemperature: number;
  /** Of the ground or the air outside, K. */
  readonly outsideTemperature: number;
}

/** Heat lost through a wall or floor, W. */
export const wallLoss: Formula<WallLoss> = {
  id: 'heat.wall-loss',
  equation: 'Q = U·A·(Tw − T)',
  inputs: {
    transmittance: { symbol: 'U', kind: 'transmittance', min: 0, max: 20 },
    area: { symbol: 'A', kind: 'area', min: 0, max: 10_000 },
    waterTemperature: WATER_TEMPERATURE,
    outsideTemperature: { ...AIR_TEMPERATURE_AT_POOL, symbol: 'T' },
  },
  result: { symbol: 'Q', kind: 'heat-rate' },
  source: CONDUCTION,
  kernel: (x) => x.transmittance * x.area * (x.waterTemperature - x.outsideTemperature),
};

export interface ConductedLoss {
  /** U·A, W/K. */
  readonly conductance: number;
  /** Tw, K. */
  readonly waterTemperature: number;
  /** Of the ground or the air outside, K. */
  readonly outsideTemperature: number;
}

/** Heat lost through walls and floor of a known conductance, W. */
export const conductedLoss: Formula<ConductedLoss> = {
  id: 'heat.conducted-loss',
  equation: 'Q = UA·(Tw − T)',
  inputs: {
    conductance: { symbol: 'UA', kind: 'conductance', min: 0, max: 1e5 },
    waterTemperature: WATER_TEMPERATURE,
    outsideTemperature: { ...AIR_TEMPERATURE_AT_POOL, symbol: 'T' },
  },
  result: { symbol: 'Q', kind: 'heat-rate' },
  source: CONDUCTION,
  kernel: (x) => x.conductance * (x.waterTemperature - x.outsideTemperature),
};
