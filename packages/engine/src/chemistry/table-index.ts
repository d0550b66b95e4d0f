/**
 * Saturation index by the pool trade's factor table: what an inspector's card gives.
 *
 *     SI = pH + TF + CF + AF − C
 *     C = 12.1 up to 1000 mg/L of dissolved solids, 12.2 above, 12.3 above 2000
 *
 * Factors lie straight between the rows, as in the rule's own example. The columns round CF = log10 Ca − 0.4 and
 * AF = log10 Alk (mg/L as CaCO3) to 0.1; between rows far apart the straight line lies up to 0.13 under the logarithm.
 * The limits of the trade were made for the card, so that the card is followed, not the logarithm.
 *
 * How sources disagree: New York's rule has 12.1 alone; 12.3 above 2000 mg/L, as in salt pools, is trade practice. The
 * three variants differ by up to about 0.15 on the worked examples, so that an index always names its variant.
 *
 * Source: 10 NYCRR 6-1.30; Administrative Rules of Montana 37.115, Tables 6 and 7 (the constant).
 * Range: pH 6 to 9, 0 to 53.3 °C, 5 to 1000 mg/L of hardness and alkalinity, up to 10 000 mg/L of dissolved solids.
 * Errors: range issues of `evaluate`.
 * Worked example: pH 7.8, 68 °F, calcium 140, alkalinity 20 → 7.8 + 0.52 + 1.76 + 1.22 − 12.1 = −0.80.
 */
import { linearTable } from '../numerics/index.ts';
import { expectOk, type Formula, type Source } from '../trace/index.ts';
import { ALKALINITY, HARDNESS, INDEX, MILLIGRAM_PER_LITRE, PH, type WaterSample } from './water-sample.ts';

export const TABLE_INDEX_SOURCE: Source = {
  document: '10 NYCRR 6-1.30, Saturation index for swimming pools',
  at: 'factor table; constant by Administrative Rules of Montana 37.115, Table 6',
  known: 'read in a public copy',
};

/** Temperature in °F and its factor. */
export const TEMPERATURE_FACTORS: readonly (readonly [fahrenheit: number, factor: number])[] = [
  [32, 0.0],
  [37, 0.1],
  [46, 0.2],
  [53, 0.3],
  [60, 0.4],
  [66, 0.5],
  [76, 0.6],
  [84, 0.7],
  [94, 0.8],
  [105, 0.9],
  [128, 1.0],
];

/** Mg/L as CaCO3, factor as calcium hardness, factor as alkalinity. */
export const CARBONATE_FACTORS: readonly (readonly [
  milligrams: number,
  hardness: number,
  alkalinity: number,
])[] = [
  [5, 0.3, 0.7],
  [25, 1.0, 1.4],
  [50, 1.3, 1.7],
  [75, 1.5, 1.9],
  [100, 1.6, 2.0],
  [150, 1.8, 2.2],
  [200, 1.9, 2.3],
  [300, 2.1, 2.5],
  [400, 2.2, 2.6],
  [800, 2.5, 2.9],
  [1000, 2.6, 3.0],
];

const kelvin = (fahrenheit: number): number => (fahrenheit + 459.67) / 1.8;

/** The range of the formula is that of the table: beyond it nothing is read. */
function table(where: string, points: readonly (readonly [x: number, y: number])[]): (x: number) => number {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const read = expectOk(linearTable({ where, xs, ys, beyond: 'hold' }));
  return (x) => read.value(x);
}

/** TF at a temperature, K. */
const temperatureFactor = table(
  'temperature',
  TEMPERATURE_FACTORS.map(([fahrenheit, factor]) => [kelvin(fahrenheit), factor]),
);

/** CF of a calcium hardness, kg/m3 as CaCO3. */
const hardnessFactor = table(
  'calcium',
  CARBONATE_FACTORS.map(([milligrams, factor]) => [milligrams * MILLIGRAM_PER_LITRE, factor]),
);

/** AF of a carbonate alkalinity, kg/m3 as CaCO3. */
const alkalinityFactor = table(
  'alkalinity',
  CARBONATE_FACTORS.map(([milligrams, , factor]) => [milligrams * MILLIGRAM_PER_LITRE, factor]),
);

/** C of the dissolved solids, kg/m3. Worked example: 1500 mg/L → 12.2. */
export function solidsConstant(dissolvedSolids: number): number {
  if (dissolvedSolids <= 1) return 12.1;
  return dissolvedSolids <= 2 ? 12.2 : 12.3;
}

/** Saturation index by the trade's table. */
export const tableIndex: Formula<WaterSample> = {
  id: 'chemistry.table-index',
  equation: 'SI = pH + TF + CF + AF − C',
  inputs: {
    ph: PH,
    temperature: { symbol: 'T', kind: 'temperature', min: 273.15, max: kelvin(128) },
    calcium: HARDNESS,
    alkalinity: ALKALINITY,
    dissolvedSolids: { symbol: 'TDS', kind: 'mass-concentration', min: 0, max: 10 },
  },
  result: INDEX,
  source: TABLE_INDEX_SOURCE,
  kernel: (x, recorder) => {
    const temperature = temperatureFactor(x.temperature);
    const hardness = hardnessFactor(x.calcium);
    const alkalinity = alkalinityFactor(x.alkalinity);
    const constant = solidsConstant(x.dissolvedSolids);
    recorder?.given({ id: 'chemistry.temperature-factor', value: temperature, kind: 'ph' });
    recorder?.given({ id: 'chemistry.hardness-factor', value: hardness, kind: 'ph' });
    recorder?.given({ id: 'chemistry.alkalinity-factor', value: alkalinity, kind: 'ph' });
    recorder?.given({ id: 'chemistry.solids-constant', value: constant, kind: 'ph' });
    return x.ph + temperature + hardness + alkalinity - constant;
  },
};
