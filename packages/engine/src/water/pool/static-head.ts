/**
 * Pressure of a column of water at rest.
 *
 *     p = ρ·g·h
 *
 * The trade's 0.433 psi a foot (2.31 ft a psi) is this at 60 °F. It is what a pressure gauge, or a pressure switch,
 * shows for standing below the water (positive) or above it (negative) while nothing flows.
 *
 * Source: hydrostatics. Range: heights to 1 km either way.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 100 ft of 60 °F water → 43.3 psi.
 */
import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';
import { DENSITY } from '../variables.ts';

const SOURCE: Source = { document: 'Hydrostatics', known: 'physics' };

export interface WaterColumn {
  /** h, m; positive where the point lies below the surface. */
  readonly height: number;
  /** ρ, kg/m3. */
  readonly density: number;
}

/** Gauge pressure, Pa. */
export const staticPressure: Formula<WaterColumn> = {
  id: 'water.static-pressure',
  equation: 'p = ρ·g·h',
  inputs: { height: { symbol: 'h', kind: 'length', min: -1000, max: 1000 }, density: DENSITY },
  result: { symbol: 'p', kind: 'pressure' },
  source: SOURCE,
  kernel: (x) => x.density * STANDARD_GRAVITY * x.height,
};

export interface WaterPressure {
  /** p, Pa. */
  readonly pressure: number;
  /** ρ, kg/m3. */
  readonly density: number;
}

/** Height of the column that makes a pressure, m: the inverse of `staticPressure`. */
export const staticHeight: Formula<WaterPressure> = {
  id: 'water.static-height',
  equation: 'h = p/(ρ·g)',
  inputs: { pressure: { symbol: 'p', kind: 'pressure', min: -1e7, max: 1e7 }, density: DENSITY },
  result: { symbol: 'h', kind: 'length' },
  source: SOURCE,
  kernel: (x) => x.pressure / (x.density * STANDARD_GRAVITY),
};
