/**
 * Flue losses by the two short forms that instruments use, beside the balance of `efficiency.ts`.
 *
 *     BS 845     dry K1·ΔT/CO2, wet K3·(1 + 0.001·ΔT), CO2 = K2·(20.9 − O2)/20.9, % of the gross heat
 *     Siegert    ΔT·(A2/(21 − O2) + B), % of the net heat        (ΔT in K, gases in %)
 *
 * How sources disagree: BS 845 with K1 = 0.3458, K2 = 11.73, K3 = 9.8 meets US DOE Steam Tip Sheet 4 within 0.15 points;
 * Siegert's natural gas, brought to the gross heat, lies up to 1.2 points above it at the hottest stacks.
 *
 * Source: BS 845-1:1987 (constants from memory); 1. BImSchV, Siegert's constants (from memory).
 * Range: oxygen up to 20 %, stack up to 700 K above the air. Errors: range issues of `evaluate`.
 * Worked example: natural gas, 3 % oxygen, 400 °F above the air → 19.6 % gross by BS 845, 10.1 % net by Siegert.
 */
import type { Formula, Variable } from '../trace/index.ts';

export interface FlueReading {
  /** O2, dry. */
  readonly oxygen: number;
  /** ΔT, stack over combustion air, K. */
  readonly rise: number;
}

const oxygen: Variable = { symbol: 'O2', kind: 'ratio', min: 0, max: 0.2 };
const rise: Variable = { symbol: 'ΔT', kind: 'temperature-difference', min: 0, max: 700 };

/** Natural gas. */
const BS845 = { k1: 0.3458, k2: 11.73, k3: 9.8 } as const;

/** Loss of natural gas by BS 845, share of the gross heat. */
export const bs845Loss: Formula<FlueReading> = {
  id: 'combustion.bs845-loss',
  equation: 'q = K1·ΔT/CO2 + K3·(1 + 0.001·ΔT), CO2 = K2·(20.9 − O2)/20.9',
  inputs: { oxygen, rise },
  result: { symbol: 'q', kind: 'ratio' },
  source: { document: 'BS 845-1:1987', at: 'flue loss, natural gas', known: 'from memory' },
  kernel: (x) => {
    const carbonDioxide = (BS845.k2 * (20.9 - 100 * x.oxygen)) / 20.9;
    return ((BS845.k1 * x.rise) / carbonDioxide + BS845.k3 * (1 + 0.001 * x.rise)) / 100;
  },
};

/** Siegert's constants by fuel; the greatest CO2 is in %. */
export const SIEGERT = {
  natural: { a1: 0.37, a2: 0.66, b: 0.009, greatestCarbonDioxide: 11.8 },
  propane: { a1: 0.42, a2: 0.63, b: 0.008, greatestCarbonDioxide: 13.8 },
} as const;

/** Loss by Siegert, share of the net heat. */
export const siegertLoss: Formula<FlueReading & { readonly a2: number; readonly b: number }> = {
  id: 'combustion.siegert-loss',
  equation: 'q = ΔT·(A2/(21 − O2) + B)',
  inputs: {
    oxygen,
    rise,
    a2: { symbol: 'A2', kind: 'ratio', min: 0.1, max: 1 },
    b: { symbol: 'B', kind: 'ratio', min: 0, max: 0.1 },
  },
  result: { symbol: 'q', kind: 'ratio' },
  source: { document: '1. BImSchV', at: 'flue loss after Siegert', known: 'from memory' },
  kernel: (x) => (x.rise * (x.a2 / (21 - 100 * x.oxygen) + x.b)) / 100,
};
