/**
 * Saturation index by the simplified form of the air-conditioning trade.
 *
 *     SI = pH − pHs        pHs = (9.3 + A + B) − (C + D)
 *     A = (log10 TDS − 1)/10        B = −13.12·log10 T + 34.55
 *     C = log10 Ca − 0.4            D = log10 Alk        (mg/L, as CaCO3; T in K)
 *
 * Source: Carrier, System Design Manual (1965), as university extension pages use it (from memory).
 * Range: pH 6 to 9, 0 to 90 °C, 5 to 1000 mg/L of hardness and alkalinity, 10 to 10 000 mg/L of dissolved solids.
 * Errors: range issues of `evaluate`.
 * Worked example: pH 7.6, 84 °F, calcium 300, alkalinity 75, TDS 1000 mg/L → pHs 7.56, SI 0.04.
 */
import type { Formula, Source } from '../trace/index.ts';
import { ALKALINITY, HARDNESS, INDEX, MILLIGRAM_PER_LITRE, PH, type WaterSample } from './water-sample.ts';

export const CARRIER_INDEX_SOURCE: Source = {
  document: 'Carrier, System Design Manual (1965)',
  at: 'simplified saturation pH, as university extension pages use it',
  known: 'from memory',
};

/** Saturation index by the simplified form. */
export const carrierIndex: Formula<WaterSample> = {
  id: 'chemistry.carrier-index',
  equation: 'SI = pH − ((9.3 + A + B) − (C + D))',
  inputs: {
    ph: PH,
    temperature: { symbol: 'T', kind: 'temperature', min: 273.15, max: 363.15 },
    calcium: HARDNESS,
    alkalinity: ALKALINITY,
    dissolvedSolids: { symbol: 'TDS', kind: 'mass-concentration', min: 0.01, max: 10 },
  },
  result: INDEX,
  source: CARRIER_INDEX_SOURCE,
  kernel: (x, recorder) => {
    const solids = (Math.log10(x.dissolvedSolids / MILLIGRAM_PER_LITRE) - 1) / 10;
    const warmth = -13.12 * Math.log10(x.temperature) + 34.55;
    const hardness = Math.log10(x.calcium / MILLIGRAM_PER_LITRE) - 0.4;
    const saturation = 9.3 + solids + warmth - hardness - Math.log10(x.alkalinity / MILLIGRAM_PER_LITRE);
    recorder?.given({ id: 'chemistry.saturation-ph', value: saturation, kind: 'ph' });
    return x.ph - saturation;
  },
};
