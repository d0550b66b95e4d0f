/**
 * Water on its boiling line: vapour pressure, boiling temperature and latent heat.
 *
 * Vapour pressure and its exact inverse are one quadratic in p^¼ and θ = T + n9/(T − n10) (IAPWS-IF97 Equations
 * 29 to 31). The latent heat is Clapeyron's equation with the saturated densities of SR1-86:
 *
 *     L = T·(1/ρ″ − 1/ρ′)·dp/dT
 *
 * How sources disagree: the handbook's saturation equation (Hyland and Wexler, in `../air/saturation`) lies up to
 * 0.02 % from this one between 0 and 50 °C. Moist-air work uses that one on both sides of a difference; the boiling
 * point and the water table use this one, which has an exact inverse.
 *
 * The latent heat stands within 0.4 kJ/kg (0.015 %) of IAPWS-IF97's between 0 and 50 °C.
 *
 * Source: IAPWS R7-97(2012) Section 8; IAPWS SR1-86(1992) Equations 1 to 3.
 * Range: 0 to 200 °C.
 * Errors: outside 273.15 to 473.15 K (611.2 Pa to 1.554 MPa) an issue of `evaluate`.
 *
 * Worked example: 26.85 °C (300 K) → 3536.59 Pa; 0.1 MPa → 372.756 K (99.606 °C); 25 °C → 2441.7 kJ/kg.
 */
import type { Formula, Source, Variable } from '../../trace/index.ts';
import type { AtTemperature } from './liquid.ts';

const IF97: Source = {
  document: 'IAPWS R7-97(2012), Industrial Formulation 1997',
  at: 'Section 8, Equations 29 to 31, Table 34',
  known: 'read in a public copy',
};

const SR1_86: Source = {
  document: 'IAPWS SR1-86(1992), Saturation Properties of Ordinary Water Substance',
  at: 'Equations 1 to 3',
  known: 'read in a public copy',
};

const CRITICAL_TEMPERATURE = 647.096;
const CRITICAL_PRESSURE = 22.064e6;
const CRITICAL_DENSITY = 322;

const temperature: Variable = { symbol: 'T', kind: 'temperature', min: 273.15, max: 473.15 };

/** p (Pa) over water at T (K): `waterVapourPressure` without its checks. */
export function vapourPressureOfWater(T: number): number {
  const t = T - 0.23855557567849 / (T - 650.17534844798);
  const a = t * (t + 1167.0521452767) - 724213.16703206;
  const b = t * (-17.073846940092 * t + 12020.82470247) - 3232555.0322333;
  const c = t * (14.91510861353 * t - 4823.2657361591) + 405113.40542057;
  return 1e6 * ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4;
}

/** T (K) at which water boils under p (Pa): `waterBoilingTemperature` without its checks. */
export function boilingTemperatureOfWater(pressure: number): number {
  const b = (pressure / 1e6) ** 0.25;
  const e = b * (b - 17.073846940092) + 14.91510861353;
  const f = b * (1167.0521452767 * b + 12020.82470247) - 4823.2657361591;
  const g = b * (-724213.16703206 * b - 3232555.0322333) + 405113.40542057;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = 650.17534844798 + d;
  return (sum - Math.sqrt(sum * sum - 4 * (-0.23855557567849 + 650.17534844798 * d))) / 2;
}

/** L (J/kg) at T (K): `waterLatentHeat` without its checks. */
export function latentHeatOfWater(T: number): number {
  const t = 1 - T / CRITICAL_TEMPERATURE;
  return T * (1 / vapourDensity(t) - 1 / liquidDensity(t)) * pressureSlope(T, t);
}

/** ρ′, kg/m3, by τ = 1 − T/Tc; the powers are multiplied out, which is several times faster than raising. */
function liquidDensity(t: number): number {
  const c = Math.cbrt(t);
  const c2 = c * c;
  const c5 = c2 * c2 * c;
  const c16 = c5 * c5 * c5 * c;
  const c43 = c16 * c16 * c5 * c5 * c;
  const c110 = c43 * c43 * c16 * c5 * c2 * c;
  const sum = 1 + 1.99274064 * c + 1.09965342 * c2 - 0.510839303 * c5 - 1.75493479 * c16;
  return CRITICAL_DENSITY * (sum - 45.5170352 * c43 - 674694.45 * c110);
}

/** ρ″, kg/m3, by τ = 1 − T/Tc. */
function vapourDensity(t: number): number {
  const c = Math.cbrt(t);
  const sixth = Math.sqrt(c);
  const t3 = t * t * t;
  const t6 = t3 * t3;
  const sum = -2.0315024 * c - 2.6830294 * c * c - 5.38626492 * t * c - 17.2991605 * t3;
  return CRITICAL_DENSITY * Math.exp(sum - 44.7586581 * t6 * sixth - (63.9201063 * t6 * t6) / sixth);
}

/** dp/dT along the boiling line, Pa/K, from SR1-86 Equation 1. */
function pressureSlope(T: number, t: number): number {
  const root = Math.sqrt(t);
  const t3 = t * t * t;
  const sum =
    t * (-7.85951783 + 1.84408259 * root) +
    t3 * (-11.7866497 + 22.6807411 * root - 15.9618719 * t + 1.80122502 * t3 * t * root);
  const derivative =
    -7.85951783 +
    1.5 * 1.84408259 * root +
    t *
      t *
      (3 * -11.7866497 + 3.5 * 22.6807411 * root + 4 * -15.9618719 * t + 7.5 * 1.80122502 * t3 * t * root);
  const ratio = CRITICAL_TEMPERATURE / T;
  return ((-CRITICAL_PRESSURE * Math.exp(ratio * sum)) / T) * (ratio * sum + derivative);
}

/** Vapour pressure over liquid water, Pa absolute. */
export const waterVapourPressure: Formula<AtTemperature> = {
  id: 'properties.water-vapour-pressure',
  equation: 'p = (2·C/(−B + √(B² − 4·A·C)))⁴',
  inputs: { temperature },
  result: { symbol: 'p', kind: 'absolute-pressure' },
  source: IF97,
  kernel: (x) => vapourPressureOfWater(x.temperature),
};

export interface AtPressure {
  /** p, Pa absolute. */
  readonly pressure: number;
}

/** Temperature at which water boils under an absolute pressure, K: the inverse of `waterVapourPressure`. */
export const waterBoilingTemperature: Formula<AtPressure> = {
  id: 'properties.water-boiling-temperature',
  equation: 'T = (n10 + D − √((n10 + D)² − 4·(n9 + n10·D)))/2',
  inputs: { pressure: { symbol: 'p', kind: 'absolute-pressure', min: 611.213, max: 1.554e6 } },
  result: { symbol: 'T', kind: 'temperature' },
  source: IF97,
  kernel: (x) => boilingTemperatureOfWater(x.pressure),
};

/** Latent heat of evaporation, J/kg. */
export const waterLatentHeat: Formula<AtTemperature> = {
  id: 'properties.water-latent-heat',
  equation: 'L = T·(1/ρ″ − 1/ρ′)·dp/dT',
  inputs: { temperature },
  result: { symbol: 'L', kind: 'latent-heat' },
  source: SR1_86,
  kernel: (x) => latentHeatOfWater(x.temperature),
};
