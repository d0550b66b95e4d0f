/**
 * Saturation index from the constants of calcite and carbonic acid, with activities for the dissolved solids.
 *
 *     SI = pH − pHs        pHs = pK2 − pKs + p[Ca] + p[HCO3] + 5·pfm
 *     pfm = A·(√I/(1 + √I) − 0.3·I)        A = 1.82e6·(E·T)^−1.5        E = 60954/(T + 116) − 68.937
 *     I = 2.5e−5·TDS (mg/L)
 *
 * Bicarbonate is taken as all of the carbonate alkalinity, which is good to 0.01 up to pH 8 and to 0.05 at pH 9.
 * Ion pairs are left out; in very hard or brackish water they lower the index by up to 0.1.
 *
 * Source: Standard Methods 2330 B (2016) with the constants of Plummer and Busenberg (1982), from memory; they give the
 * published pK2 = 10.329 and pKs = 8.480 at 25 °C.
 * Range: pH 6 to 9, 0 to 90 °C, 5 to 1000 mg/L, ionic strength under 0.5 (20 000 mg/L).
 * Errors: range issues of `evaluate`.
 * Worked example: pH 7.6, 84 °F, calcium 300, alkalinity 75, TDS 1000 mg/L → pHs 7.47, SI 0.13.
 */
import type { Formula, Source } from '../trace/index.ts';
import { ALKALINITY, HARDNESS, INDEX, MILLIGRAM_PER_LITRE, PH, type WaterSample } from './water-sample.ts';

export const STANDARD_METHODS_SOURCE: Source = {
  document: 'Standard Methods 2330 B (2016)',
  at: 'saturation index, Plummer and Busenberg constants',
  known: 'from memory',
};

/** kg/mol of CaCO3; kg/m3 over it is mol/L times 1000. */
const CALCITE = 0.1000869;
/** Ionic strength, mol/L, of a kg/m3 of dissolved solids. */
const STRENGTH = 0.025;

/** −log10 of the second dissociation constant of carbonic acid at T, K. */
export function secondDissociation(T: number): number {
  return 107.8871 + 0.03252849 * T - 5151.79 / T - 38.92561 * Math.log10(T) + 563_713.9 / (T * T);
}

/** −log10 of the solubility product of calcite at T, K. */
export function calciteSolubility(T: number): number {
  return 171.9065 + 0.077993 * T - 2839.319 / T - 71.595 * Math.log10(T);
}

/** −log10 of the activity coefficient of a single charge, at T, K, in dissolved solids, kg/m3. */
export function activity(T: number, dissolvedSolids: number): number {
  const permittivity = 60_954 / (T + 116) - 68.937;
  const strength = STRENGTH * dissolvedSolids;
  const root = Math.sqrt(strength);
  return 1.82e6 * (permittivity * T) ** -1.5 * (root / (1 + root) - 0.3 * strength);
}

/** pHs: pH at which the water neither takes up nor drops calcite. */
function saturationPh({ temperature: T, calcium, alkalinity, dissolvedSolids }: WaterSample): number {
  const calciumIon = -Math.log10(calcium / CALCITE / 1000);
  const bicarbonate = -Math.log10((2 * alkalinity) / CALCITE / 1000);
  const constants = secondDissociation(T) - calciteSolubility(T);
  return constants + calciumIon + bicarbonate + 5 * activity(T, dissolvedSolids);
}

/** Saturation index from equilibrium constants. */
export const standardMethodsIndex: Formula<WaterSample> = {
  id: 'chemistry.standard-methods-index',
  equation: 'SI = pH − (pK2 − pKs + p[Ca] + p[HCO3] + 5·pfm)',
  inputs: {
    ph: PH,
    temperature: { symbol: 'T', kind: 'temperature', min: 273.15, max: 363.15 },
    calcium: HARDNESS,
    alkalinity: ALKALINITY,
    dissolvedSolids: { symbol: 'TDS', kind: 'mass-concentration', min: 0, max: 20_000 * MILLIGRAM_PER_LITRE },
  },
  result: INDEX,
  source: STANDARD_METHODS_SOURCE,
  kernel: (x, recorder) => {
    const saturation = saturationPh(x);
    recorder?.given({ id: 'chemistry.saturation-ph', value: saturation, kind: 'ph' });
    return x.ph - saturation;
  },
};
