/**
 * Alkalinity left to the carbonates where cyanuric acid is in the water: a test kit counts cyanurate too.
 *
 *     Alk = TA − F·CYA        F = 0.3877/(1 + 10^(6.83 − pH))
 *
 * F is the share of the acid that has given off its first proton, pK 6.83, times 50.04/129.07, the equivalent weight of
 * calcium carbonate over the molar mass of cyanuric acid.
 *
 * How sources disagree: pool operators take off a third whatever the pH; the table runs from 0.23 at pH 7.0 to 0.36 at
 * pH 8.0, and this fit meets each of its rows within 0.006.
 *
 * Source: Wojtowicz, J. Swimming Pool and Spa Industry, table of F (from memory); a third near pH 7.5, Service Industry
 * News, 14 September 2021.
 * Range: pH 6 to 9, up to 1000 mg/L of each.
 * Errors: range issues of `evaluate`. The result is negative where the cyanurate counts for more than was titrated; the
 * index then answers with an issue.
 * Worked example: pH 7.5, 100 mg/L total, 60 mg/L cyanuric acid → 100 − 0.319·60 = 80.8 mg/L.
 */
import type { Formula, Source } from '../trace/index.ts';
import { PH } from './water-sample.ts';

export const CYANURATE_SOURCE: Source = {
  document: 'Wojtowicz, Journal of the Swimming Pool and Spa Industry',
  at: 'cyanurate share of the alkalinity, fit to its table',
  known: 'from memory',
};

/** pK of the first proton of cyanuric acid that fits the table. */
const FIRST_PK = 6.83;
/** Equivalent weight of CaCO3 over the molar mass of cyanuric acid. */
const WEIGHTS = 50.04 / 129.07;

/** F: alkalinity as CaCO3 counted for each part of cyanuric acid at a pH. */
export function cyanurateFactor(ph: number): number {
  return WEIGHTS / (1 + 10 ** (FIRST_PK - ph));
}

export interface StabilisedWater {
  readonly ph: number;
  /** TA as titrated, as CaCO3, kg/m3. */
  readonly totalAlkalinity: number;
  /** CYA, kg/m3. */
  readonly cyanuricAcid: number;
}

/** Carbonate alkalinity as CaCO3, kg/m3. */
export const carbonateAlkalinity: Formula<StabilisedWater> = {
  id: 'chemistry.carbonate-alkalinity',
  equation: 'Alk = TA − CYA·0.3877/(1 + 10^(6.83 − pH))',
  inputs: {
    ph: PH,
    totalAlkalinity: { symbol: 'TA', kind: 'mass-concentration', min: 0, max: 1 },
    cyanuricAcid: { symbol: 'CYA', kind: 'mass-concentration', min: 0, max: 1 },
  },
  result: { symbol: 'Alk', kind: 'mass-concentration' },
  source: CYANURATE_SOURCE,
  kernel: (x) => x.totalAlkalinity - cyanurateFactor(x.ph) * x.cyanuricAcid,
};
