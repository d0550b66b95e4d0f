/**
 * How warm the sky looks to the water.
 *
 *     Tsky = ε^¼·Ta          ε = ε_clear·(1 + 0.0224·N − 0.0035·N² + 0.00028·N³), N tenths of cloud, ε at most 1
 *
 *     Berdahl and Martin   ε_clear = 0.711 + 0.56·(Td/100) + 0.73·(Td/100)²                Td in °C
 *     the same, refitted   ε_clear = 0.758 + 0.521·(Td/100) + 0.625·(Td/100)²
 *     Brunt, refitted      ε_clear = 0.618 + 0.056·√p                                      p in hPa
 *     Idso, refitted       ε_clear = 0.685 + 3.2e-5·p·exp(1699/Ta)
 *     Clark and Allen      ε_clear = 0.787 + 0.764·ln(Td/273 K)
 *     Swinbank             Tsky = 0.0552·Ta^1.5                                            no humidity
 *
 * How sources disagree: over one set of measured clear skies the deviations are 22 W/m2 (Berdahl and Martin), 32
 * (Brunt as first printed) and 13 for the three refitted. Berdahl and Martin's is the usual one and the default.
 *
 * Source: Berdahl and Martin (1984), Solar Energy 32(5):663-664; Li, Jiang and Coimbra (2017), Solar Energy 144:40-48,
 * as tabled in a public design document of 2019; Clark and Allen (1978), Walton (1983) and Swinbank (1963) from memory.
 * Range: dew point −40 to 30 °C (Berdahl and Martin: −20 to 30), air −50 to 60 °C, cloud 0 to 1.
 * Errors: values outside are issues of `evaluate`; the plain functions check nothing.
 *
 * Worked example: air 20 °C, dew point 10 °C, clear, Berdahl and Martin → ε 0.774, sky 1.8 °C.
 */
import type { Formula, Source, Variable } from '../../trace/index.ts';
import { AIR_TEMPERATURE_AT_POOL } from './variables.ts';

const ZERO = 273.15;

const BERDAHL: Source = {
  document: 'Berdahl and Martin (1984), Solar Energy 32(5):663-664',
  known: 'read in a public copy',
};
const REFITTED: Source = {
  document: 'Li, Jiang and Coimbra (2017), Solar Energy 144:40-48',
  at: 'refitted clear-sky emissivities',
  known: 'read in a public copy',
};
const CLARK: Source = { document: 'Clark and Allen (1978)', known: 'from memory' };
const WALTON: Source = { document: 'Walton (1983), after Clark and Allen (1978)', known: 'from memory' };
const SWINBANK: Source = {
  document: 'Swinbank (1963), Quarterly Journal of the Royal Meteorological Society 89:339',
  known: 'from memory',
};

const dewPoint: Variable = { symbol: 'Td', kind: 'temperature', min: 233.15, max: 303.15 };
const vapourPressure: Variable = { symbol: 'p', kind: 'absolute-pressure', min: 0, max: 5000 };
const emissivity: Variable = { symbol: 'ε', kind: 'ratio' };
const cloud: Variable = { symbol: 'N/10', kind: 'ratio', min: 0, max: 1 };

/** ε of a clear sky by Berdahl and Martin, of the dew point (K). */
export function berdahlMartinEmissivity(dew: number): number {
  const t = (dew - ZERO) / 100;
  return 0.711 + t * (0.56 + 0.73 * t);
}

/** What cloud (share of the sky, 0 to 1) multiplies a clear emissivity by. */
export function cloudFactor(share: number): number {
  const n = 10 * share;
  return 1 + n * (0.0224 + n * (-0.0035 + n * 0.00028));
}

/** Sky temperature (K) of a clear emissivity, cloud (0 to 1) and air temperature (K). */
export function skyTemperatureOf(clear: number, share: number, airTemperature: number): number {
  return Math.min(1, clear * cloudFactor(share)) ** 0.25 * airTemperature;
}

type Dew = { readonly dewPoint: number };

/** Clear-sky emissivity by Berdahl and Martin (1984). */
export const berdahlMartin: Formula<Dew> = {
  id: 'heat.sky-berdahl-martin',
  equation: 'ε = 0.711 + 0.56·(Td/100) + 0.73·(Td/100)²',
  inputs: { dewPoint: { ...dewPoint, min: 253.15 } },
  result: emissivity,
  source: BERDAHL,
  kernel: (x) => berdahlMartinEmissivity(x.dewPoint),
};

/** Clear-sky emissivity by Berdahl and Martin's form, refitted. */
export const berdahlMartinRefitted: Formula<Dew> = {
  id: 'heat.sky-berdahl-martin-refitted',
  equation: 'ε = 0.758 + 0.521·(Td/100) + 0.625·(Td/100)²',
  inputs: { dewPoint },
  result: emissivity,
  source: REFITTED,
  kernel: (x) => {
    const t = (x.dewPoint - ZERO) / 100;
    return 0.758 + t * (0.521 + 0.625 * t);
  },
};

/** Clear-sky emissivity by Clark and Allen (1978). */
export const clarkAllen: Formula<Dew> = {
  id: 'heat.sky-clark-allen',
  equation: 'ε = 0.787 + 0.764·ln(Td/273)',
  inputs: { dewPoint },
  result: emissivity,
  source: CLARK,
  kernel: (x) => 0.787 + 0.764 * Math.log(x.dewPoint / 273),
};

/** Clear-sky emissivity by Brunt's form, refitted. */
export const bruntRefitted: Formula<{ readonly vapourPressure: number }> = {
  id: 'heat.sky-brunt-refitted',
  equation: 'ε = 0.618 + 0.056·√p',
  inputs: { vapourPressure },
  result: emissivity,
  source: REFITTED,
  kernel: (x) => 0.618 + 0.056 * Math.sqrt(x.vapourPressure / 100),
};

export interface WarmVapour {
  readonly vapourPressure: number;
  readonly airTemperature: number;
}

/** Clear-sky emissivity by Idso's form, refitted. */
export const idsoRefitted: Formula<WarmVapour> = {
  id: 'heat.sky-idso-refitted',
  equation: 'ε = 0.685 + 3.2e-5·p·exp(1699/Ta)',
  inputs: { vapourPressure, airTemperature: AIR_TEMPERATURE_AT_POOL },
  result: emissivity,
  source: REFITTED,
  kernel: (x) => 0.685 + 3.2e-5 * (x.vapourPressure / 100) * Math.exp(1699 / x.airTemperature),
};

/** Temperature of a clear sky by Swinbank (1963), K. */
export const swinbank: Formula<{ readonly airTemperature: number }> = {
  id: 'heat.sky-swinbank',
  equation: 'Tsky = 0.0552·Ta^1.5',
  inputs: { airTemperature: AIR_TEMPERATURE_AT_POOL },
  result: { symbol: 'Tsky', kind: 'temperature' },
  source: SWINBANK,
  kernel: (x) => 0.0552 * x.airTemperature ** 1.5,
};

export interface CloudySky {
  /** ε of the clear sky. */
  readonly clearEmissivity: number;
  /** Share of the sky under cloud, 0 to 1. */
  readonly cloud: number;
  readonly airTemperature: number;
}

/** Temperature of a sky with cloud, K. */
export const skyTemperature: Formula<CloudySky> = {
  id: 'heat.sky-temperature',
  equation: 'Tsky = (ε·(1 + 0.0224·N − 0.0035·N² + 0.00028·N³))^¼·Ta',
  inputs: {
    clearEmissivity: { ...emissivity, min: 0.3, max: 1 },
    cloud,
    airTemperature: AIR_TEMPERATURE_AT_POOL,
  },
  result: { symbol: 'Tsky', kind: 'temperature' },
  source: WALTON,
  kernel: (x) => skyTemperatureOf(x.clearEmissivity, x.cloud, x.airTemperature),
};
