/**
 * The choice of an evaporation method, and how far each may be believed.
 *
 * `relativeUncertainty` is a 95 % half-width on the evaporation of a given pool: what the measured pools scatter about
 * the equation, not the rounding of its constants. Everything computed from it carries it along.
 */
import { latentHeatOfWater } from '../../../properties/index.ts';
import type { Source } from '../../../trace/index.ts';
import { activityEvaporation, activityMass } from './activity.ts';
import { DRAUGHT, type RoomOverWater, shahMass, shahQuietEvaporation } from './shah.ts';
import { WIND_FORMS, type WindForm, windFormHeat } from './wind-form.ts';

export const EVAPORATION_METHODS = ['smith', 'ashrae', 'carrier', 'shah', 'iso', 'retscreen'] as const;
export type EvaporationMethod = (typeof EVAPORATION_METHODS)[number];

export interface EvaporationTraits {
  readonly relativeUncertainty: number;
  /** Whether the speed of the air enters; a method without it is for still indoor air. */
  readonly usesAirSpeed: boolean;
  /** Activity that stands for water with nobody in it. */
  readonly quietActivity: number;
}

/** *Judgement*, resting on the published scatter: 18 % mean deviation (Shah), 0.72 to 0.84 of Carrier (Smith). */
export const EVAPORATION_TRAITS: Readonly<Record<EvaporationMethod, EvaporationTraits>> = {
  smith: { relativeUncertainty: 0.3, usesAirSpeed: true, quietActivity: 1 },
  ashrae: { relativeUncertainty: 0.3, usesAirSpeed: false, quietActivity: 0.5 },
  /** Quiet pools were measured at 0.72 to 0.76 of it. */
  carrier: { relativeUncertainty: 0.4, usesAirSpeed: true, quietActivity: 1 },
  shah: { relativeUncertainty: 0.3, usesAirSpeed: false, quietActivity: 1 },
  iso: { relativeUncertainty: 0.3, usesAirSpeed: true, quietActivity: 1 },
  retscreen: { relativeUncertainty: 0.3, usesAirSpeed: true, quietActivity: 1 },
};

/** Where a method's equation comes from. */
export function evaporationSource(method: EvaporationMethod): Source {
  if (method === 'ashrae') return activityEvaporation.source;
  return method === 'shah' ? shahQuietEvaporation.source : WIND_FORMS[method].source;
}

/** Evaporation with people in the water over that without (Smith, Löf and Jones 1998: few and many swimmers). */
export const SWIMMERS_FACTOR = { few: 1.4, many: 1.7 } as const;

export interface EvaporationState extends RoomOverWater {
  /** v, m/s at the water. */
  readonly airSpeed: number;
  /** Handbook factor for `ashrae`, a multiple of the quiet rate for the others. */
  readonly activity: number;
}

/**
 * Heat of evaporation from bare water a pascal of vapour-pressure difference, W/(m2 Pa), by any method, of the vapour
 * pressure at the water (Pa). The heat is this times pw − pa. Nothing is checked and nothing allocated.
 */
export function evaporationCoefficient(
  method: EvaporationMethod,
  x: EvaporationState,
  atWater: number,
): number {
  switch (method) {
    case 'ashrae':
      return activityMass(1, x.activity) * latentHeatOfWater(x.waterTemperature);
    case 'shah':
      return x.activity * shahCoefficient(x, atWater) * latentHeatOfWater(x.waterTemperature);
    default: {
      const form: WindForm = WIND_FORMS[method];
      return x.activity * windFormHeat(form, 1, x.airSpeed);
    }
  }
}

function shahCoefficient(x: EvaporationState, atWater: number): number {
  const difference = atWater - x.vapourPressure;
  return difference > 0 ? shahMass(x, atWater) / difference : DRAUGHT;
}

/** What one more metre a second adds to the coefficient, W/(m2 Pa); indoor methods have none and take Smith's. */
export function evaporationPerSpeed(method: EvaporationMethod): number {
  return method === 'ashrae' || method === 'shah' ? WIND_FORMS.smith.perSpeed : WIND_FORMS[method].perSpeed;
}
