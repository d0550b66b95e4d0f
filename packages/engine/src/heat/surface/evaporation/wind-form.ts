/**
 * Evaporation that rises with the speed of the air over the water:
 *
 *     q = (a + b·v)·(pw − pa)      E = q/L(Tw)
 *
 * with q in W/m2, pressures in Pa, v in m/s at the water, E in kg/(m2 s), L the latent heat at the water's temperature.
 *
 * How sources disagree: over the same quiet pool at 27 °C the five sets give from 0.57 (RETScreen, still air) to 1
 * (Carrier). Carrier's come from trays and tunnels; pools measured with nobody in them give 0.72 to 0.76 of it.
 * Smith, Löf and Jones measured an outdoor pool at 1500 m, with wind at the water up to 2.2 m/s, and are followed for
 * quiet outdoor pools; ISO/TR 12596 lies within 4 % of them. None is better than ±30 % on a given pool and day.
 *
 * Where pw < pa vapour condenses on the water and q is negative; the same coefficients are used.
 *
 * Source: see `WIND_FORMS`.
 * Range: water 0 to 50 °C, air −50 to 60 °C, 0 to 15 m/s (measured to 2.2 m/s; beyond it the line is prolonged).
 * Errors: values outside are issues of `evaluate`; `windFormHeat` checks nothing.
 *
 * Worked example: water 27 °C, air 25 °C at 50 %, 1 m/s, Smith → 259 W/m2, 0.383 kg/(m2 h).
 */
import { BTU, DAY, FOOT, HOUR, INCH_OF_MERCURY, MINUTE, SQUARE_FOOT } from '../../../quantity/index.ts';
import type { Formula, Recorder, Source } from '../../../trace/index.ts';
import { AIR_SPEED, WATER_AND_AIR, type WaterAndAir } from '../variables.ts';
import { latentHeatAtWater, vapourDifference } from './vapour.ts';

export interface WindForm {
  /** a, W/(m2 Pa). */
  readonly still: number;
  /** b, W/(m2 Pa) a m/s. */
  readonly perSpeed: number;
  readonly source: Source;
}

/** One millimetre of mercury, Pa. */
const MM_HG = 133.322387415;
const CARRIER = BTU / HOUR / SQUARE_FOOT / INCH_OF_MERCURY;
const SMITH = 1000 / HOUR / MM_HG;
const ISO = 1e6 / DAY / 1000;

/** Coefficients by author. */
export const WIND_FORMS = {
  smith: {
    still: 30.6 * SMITH,
    perSpeed: 32.1 * SMITH,
    source: {
      document: 'Smith, Löf and Jones (1994), Solar Energy 53(1):3-7',
      at: 'E = (30.6 + 32.1·v)·(pw − pa)/hfg, mmHg',
      known: 'from memory',
    },
  },
  carrier: {
    still: 95 * CARRIER,
    perSpeed: (0.425 * CARRIER * MINUTE) / FOOT,
    source: {
      document: 'Carrier (1918), as quoted by Smith, Löf and Jones (1998), ASHRAE Transactions 104(1A) 4146',
      at: 'Equation 1, W = (95 + 0.425·v)·(pw − pa)/Y, inHg and ft/min',
      known: 'read in a public copy',
    },
  },
  handbook: {
    still: 0.089,
    perSpeed: 0.0782,
    source: {
      document: 'ASHRAE Handbook-HVAC Applications',
      at: 'Natatoriums, w = A·(pw − pa)·(0.089 + 0.0782·V)/Y',
      known: 'from memory',
    },
  },
  iso: {
    still: 5.64 * ISO,
    perSpeed: 5.96 * ISO,
    source: {
      document: 'ISO/TR 12596:1995',
      at: 'q = (5.64 + 5.96·v)·(pw − pa), MJ/(m2 d) and kPa',
      known: 'from memory',
    },
  },
  retscreen: {
    still: 0.05058,
    perSpeed: 0.0669,
    source: {
      document: 'RETScreen Engineering and Cases Textbook',
      at: 'Solar water heating, swimming pools',
      known: 'from memory',
    },
  },
} as const satisfies Readonly<Record<string, WindForm>>;

export type WindFormName = keyof typeof WIND_FORMS;

export interface WindyWater extends WaterAndAir {
  /** v, m/s at the water. */
  readonly airSpeed: number;
}

/** Heat (W/m2) that evaporation takes, of a pressure difference (Pa) and an air speed (m/s). */
export function windFormHeat(form: WindForm, difference: number, airSpeed: number): number {
  return (form.still + form.perSpeed * airSpeed) * difference;
}

function massFlux(name: WindFormName): Formula<WindyWater> {
  const form: WindForm = WIND_FORMS[name];
  return {
    id: `heat.evaporation-${name}`,
    equation: 'E = (a + b·v)·(pw − pa)/L',
    inputs: { ...WATER_AND_AIR, airSpeed: AIR_SPEED },
    result: { symbol: 'E', kind: 'mass-flux' },
    source: form.source,
    kernel: (x, recorder?: Recorder) =>
      windFormHeat(form, vapourDifference(x, recorder), x.airSpeed) / latentHeatAtWater(x, recorder),
  };
}

/** Evaporation of a quiet outdoor pool, kg/(m2 s). */
export const smithEvaporation = massFlux('smith');
/** Evaporation by Carrier's equation, kg/(m2 s): 1.3 to 1.4 times that of a quiet pool. */
export const carrierEvaporation = massFlux('carrier');
/** Evaporation by the handbook's equation with its air speed, kg/(m2 s): Carrier's, rounded in SI. */
export const handbookEvaporation = massFlux('handbook');
/** Evaporation by ISO/TR 12596, kg/(m2 s). */
export const isoEvaporation = massFlux('iso');
/** Evaporation by the RETScreen textbook, kg/(m2 s). */
export const retscreenEvaporation = massFlux('retscreen');
