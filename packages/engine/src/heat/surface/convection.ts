/**
 * Heat the air takes from the water without evaporating it.
 *
 *     linear   q = (h0 + h1·v)·(Tw − Ta)
 *     Bowen    q = q_e·γ·(Tw − Ta)/(pw − pa),  γ = 0.61e-3·P
 *
 * How sources disagree: at 1 m/s the linear forms give 5.8 to 9.5 W/(m2 K). McAdams holds for a plate in a tunnel and
 * includes some radiation. Bowen's ratio ties convection to the evaporation used, whatever that is, and thins with the
 * air; it has no meaning where pw = pa, which is why it is written on the coefficient of evaporation and not on its
 * flux. The linear form of ISO/TR 12596 and RETScreen is the usual one outdoors and is the default.
 *
 * Source: Bowen (1926); ISO/TR 12596:1995; McAdams (1954); Watmuff (1977); all from memory.
 * Range: water 0 to 50 °C, air −50 to 60 °C, 0 to 15 m/s.
 * Errors: values outside are issues of `evaluate`; the plain functions check nothing.
 *
 * Worked example: water 27 °C, air 20 °C, 1 m/s, linear → 50.4 W/m2.
 */
import type { Formula, Source } from '../../trace/index.ts';
import { AIR_SPEED, AIR_TEMPERATURE_AT_POOL, PRESSURE_AT_POOL, WATER_TEMPERATURE } from './variables.ts';

export interface FilmForm {
  /** h0, W/(m2 K). */
  readonly still: number;
  /** h1, W/(m2 K) a m/s. */
  readonly perSpeed: number;
  readonly source: Source;
}

/** Coefficients of the linear form by author. */
export const FILM_FORMS = {
  linear: {
    still: 3.1,
    perSpeed: 4.1,
    source: { document: 'ISO/TR 12596:1995', at: 'h = 3.1 + 4.1·v', known: 'from memory' },
  },
  mcadams: {
    still: 5.7,
    perSpeed: 3.8,
    source: { document: 'McAdams (1954)', at: 'h = 5.7 + 3.8·v, v under 5 m/s', known: 'from memory' },
  },
  watmuff: {
    still: 2.8,
    perSpeed: 3,
    source: { document: 'Watmuff et al. (1977)', at: 'h = 2.8 + 3.0·v', known: 'from memory' },
  },
} as const satisfies Readonly<Record<string, FilmForm>>;

export const CONVECTION_METHODS = ['linear', 'bowen', 'mcadams', 'watmuff'] as const;
export type ConvectionMethod = (typeof CONVECTION_METHODS)[number];

/** γ/P, 1/K: pressure of vapour that carries as much heat as a kelvin of warmth, over the total pressure. */
export const BOWEN_CONSTANT = 0.61e-3;

const BOWEN: Source = { document: 'Bowen (1926)', at: 'γ = 0.61e-3·P', known: 'from memory' };

/**
 * Heat of convection a kelvin, W/(m2 K), by any method, of the air speed (m/s) and of the evaporation coefficient times
 * the air's pressure (W/m2), which only Bowen's ratio uses.
 */
export function convectionCoefficient(
  method: ConvectionMethod,
  airSpeed: number,
  evaporative: number,
): number {
  if (method === 'bowen') return BOWEN_CONSTANT * evaporative;
  return filmHeat(FILM_FORMS[method], 1, airSpeed);
}

/** Heat (W/m2) by a linear form, of a temperature difference (K) and an air speed (m/s). */
export function filmHeat(form: FilmForm, difference: number, airSpeed: number): number {
  return (form.still + form.perSpeed * airSpeed) * difference;
}

export interface WindOverWater {
  /** Tw, K. */
  readonly waterTemperature: number;
  /** Ta, K. */
  readonly airTemperature: number;
  /** v, m/s. */
  readonly airSpeed: number;
}

const inputs = {
  waterTemperature: WATER_TEMPERATURE,
  airTemperature: AIR_TEMPERATURE_AT_POOL,
  airSpeed: AIR_SPEED,
} as const;

function film(name: keyof typeof FILM_FORMS, id: string): Formula<WindOverWater> {
  const form: FilmForm = FILM_FORMS[name];
  return {
    id,
    equation: 'q = (h0 + h1·v)·(Tw − Ta)',
    inputs,
    result: { symbol: 'qc', kind: 'heat-flux' },
    source: form.source,
    kernel: (x) => filmHeat(form, x.waterTemperature - x.airTemperature, x.airSpeed),
  };
}

/** Convection by the linear form of ISO/TR 12596, W/m2. */
export const linearConvection = film('linear', 'heat.convection-linear');
/** Convection by McAdams, W/m2. */
export const mcadamsConvection = film('mcadams', 'heat.convection-mcadams');
/** Convection by Watmuff, W/m2. */
export const watmuffConvection = film('watmuff', 'heat.convection-watmuff');

export interface BesideEvaporation {
  readonly waterTemperature: number;
  readonly airTemperature: number;
  /** q_e, W/m2. */
  readonly evaporation: number;
  /** pw − pa, Pa. */
  readonly vapourDifference: number;
  /** P, Pa. */
  readonly pressure: number;
}

/** Convection by Bowen's ratio, W/m2; no answer where the vapour pressures are equal. */
export const bowenConvection: Formula<BesideEvaporation> = {
  id: 'heat.convection-bowen',
  equation: 'q = q_e·0.61e-3·P·(Tw − Ta)/(pw − pa)',
  inputs: {
    waterTemperature: WATER_TEMPERATURE,
    airTemperature: AIR_TEMPERATURE_AT_POOL,
    evaporation: { symbol: 'q_e', kind: 'heat-flux' },
    vapourDifference: { symbol: 'pw − pa', kind: 'pressure-difference' },
    pressure: PRESSURE_AT_POOL,
  },
  result: { symbol: 'qc', kind: 'heat-flux' },
  source: BOWEN,
  kernel: (x) =>
    convectionCoefficient('bowen', 0, (x.evaporation / x.vapourDifference) * x.pressure) *
    (x.waterTemperature - x.airTemperature),
};
