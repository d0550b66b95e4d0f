/**
 * Evaporation of an indoor pool by how it is used.
 *
 *     w = 4e-5·(pw − pa)·Fa     kg/(m2 s), kPa
 *
 * The latent heat (2400 kJ/kg) and the air speed (0.1 m/s) are inside the constant, so neither enters again.
 *
 * How sources disagree: the table of factors was rearranged about 2010. Hotel and public pools kept theirs; a school
 * pool fell from 1.0 to 0.8. The inch-pound form, 0.1·(pw − pa)·Fa lb/(h ft2) and inHg, is 0.1 % above this one.
 *
 * Source: ASHRAE Handbook-HVAC Applications 2011 chapter 5 and 2019 chapter 6 (equation from memory).
 * Range: water 0 to 50 °C; made for air at 0.05 to 0.15 m/s; factor 0 to 5.
 * Errors: values outside are issues of `evaluate`; `activityMass` checks nothing.
 *
 * Worked example: hotel pool (0.8), water 28 °C, air 29 °C at 60 % → 0.159 kg/(m2 h).
 */
import type { Formula, HowKnown, Source } from '../../../trace/index.ts';
import { ACTIVITY, WATER_AND_AIR, type WaterAndAir } from '../variables.ts';
import { vapourDifference } from './vapour.ts';

const SOURCE: Source = {
  document: 'ASHRAE Handbook-HVAC Applications 2011',
  at: 'Chapter 5, natatorium evaporation with activity factor',
  known: 'from memory',
};

/** Highest air speed for which the constant was made, m/s (30 ft/min). */
export const STILL_AIR_SPEED = 0.1525;

const RATE = 4e-8;

export interface ActivePool extends WaterAndAir {
  /** Fa. */
  readonly activity: number;
}

/** Mass (kg/(m2 s)) of a pressure difference (Pa) and an activity factor. */
export function activityMass(difference: number, activity: number): number {
  return RATE * difference * activity;
}

/** Evaporation of an indoor pool in use, kg/(m2 s). */
export const activityEvaporation: Formula<ActivePool> = {
  id: 'heat.evaporation-activity',
  equation: 'E = 4e-5·(pw − pa)·Fa',
  inputs: { ...WATER_AND_AIR, activity: ACTIVITY },
  result: { symbol: 'E', kind: 'mass-flux' },
  source: SOURCE,
  kernel: (x, recorder) => activityMass(vapourDifference(x, recorder), x.activity),
};

export interface ActivityFactor {
  /** In the handbook of 2011 and since. */
  readonly factor?: number;
  /** In that of 1999 to 2007. */
  readonly earlier?: number;
  readonly known: HowKnown;
}

const MEMORY = 'from memory';
const READ = 'read in a public copy';

/** Activity factors by use of the pool. */
export const ACTIVITY_FACTORS = {
  unoccupied: { factor: 0.5, earlier: 0.5, known: MEMORY },
  residential: { factor: 0.5, earlier: 0.5, known: MEMORY },
  condominium: { earlier: 0.65, known: MEMORY },
  'elderly-swim': { factor: 0.65, known: READ },
  fitness: { factor: 0.65, known: READ },
  therapy: { factor: 0.65, earlier: 0.65, known: MEMORY },
  'swim-meet': { factor: 0.65, known: MEMORY },
  hotel: { factor: 0.8, earlier: 0.8, known: READ },
  /** The label was read, the figure recalled. */
  school: { factor: 0.8, earlier: 1, known: MEMORY },
  public: { factor: 1, earlier: 1, known: MEMORY },
  whirlpool: { factor: 1, earlier: 1, known: MEMORY },
  /** At least this. */
  wave: { factor: 1.5, earlier: 1.5, known: MEMORY },
} as const satisfies Readonly<Record<string, ActivityFactor>>;

export type PoolUse = keyof typeof ACTIVITY_FACTORS;
