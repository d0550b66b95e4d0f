/**
 * Openings of a room by the Canadian code: one for the air the burners take, one high up that lets warm air out.
 *
 *     A = min(I, 1 MBtu/h)/d + max(I − 1 MBtu/h, 0)/(2·d)
 *                              d = 7000 Btu/h a square inch with a draught hood or regulator, 14 000 without
 *     A = I/30 000             for power burners
 *     Av = max(0.1·A, 10 in2)
 *
 * The tables for up to 400 000 Btu/h step by 25 000 Btu/h: the next larger input counts. That step, and 14 000, are
 * read off the printed examples, not off the tables.
 *
 * Source: CSA B149.1 clauses 8.2 and 8.4, as quoted in a gas technician’s training text.
 * Range: input 0 to 10 MW. Errors: range issues of `evaluate`.
 * Worked example: 290 000 Btu/h with draught hoods → as 300 000: 43 in2; 700 000 → 100 in2 and 10 in2 high up.
 */
import { BTU, HOUR, INCH } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

export const CANADIAN_OPENING_SOURCE: Source = {
  document: 'CSA B149.1',
  at: '8.2 and 8.4, as quoted in a gas technician’s training text',
  known: 'read in a public copy',
};

const BTU_PER_HOUR = BTU / HOUR;
const TABLE_STEP = 25_000 * BTU_PER_HOUR;
const TABLE_END = 400_000 * BTU_PER_HOUR;
const MILLION = 1e6 * BTU_PER_HOUR;
/** A reading of just a step, such as 300 kBtu/h, is that step whatever its last digit. */
const SLACK = 1e-9;

const perSquareInch = (btu: number): number => (btu * BTU_PER_HOUR) / INCH ** 2;

/** Heat input a square metre of opening serves, W/m2. */
export const CANADIAN_RATES = {
  'draught-control': perSquareInch(7000),
  'no-draught-control': perSquareInch(14_000),
  'power-burner': perSquareInch(30_000),
} as const;

export type CanadianBurner = keyof typeof CANADIAN_RATES;

export interface CanadianNeed {
  /** I of all burners in the room, W. */
  readonly heatInput: number;
  /** d, W/m2: see `CANADIAN_RATES`. */
  readonly rate: number;
}

/** Free area of the opening that brings air to the burners, m2. */
export const canadianOpening: Formula<CanadianNeed> = {
  id: 'air.canadian-opening',
  equation: 'A = min(I, 1 MBtu/h)/d + max(I − 1 MBtu/h, 0)/(2·d)',
  inputs: {
    heatInput: { symbol: 'I', kind: 'heat-rate', min: 0, max: 1e7 },
    rate: { symbol: 'd', kind: 'heat-flux', min: 1e5, max: 2e7 },
  },
  result: { symbol: 'A', kind: 'area' },
  source: CANADIAN_OPENING_SOURCE,
  kernel: ({ heatInput, rate }) => {
    if (rate === CANADIAN_RATES['power-burner']) return heatInput / rate;
    if (heatInput <= TABLE_END) return (TABLE_STEP * Math.ceil(heatInput / TABLE_STEP - SLACK)) / rate;
    return Math.min(heatInput, MILLION) / rate + Math.max(heatInput - MILLION, 0) / (2 * rate);
  },
};

export interface SupplyOpening {
  /** A of the opening that brings air, m2. */
  readonly area: number;
}

const LEAST_HIGH_OPENING = 10 * INCH ** 2;

/** Free area of the opening high up, m2. */
export const canadianHighOpening: Formula<SupplyOpening> = {
  id: 'air.canadian-high-opening',
  equation: 'Av = max(0.1·A, 10 in²)',
  inputs: { area: { symbol: 'A', kind: 'area', min: 0, max: 100 } },
  result: { symbol: 'Av', kind: 'area' },
  source: CANADIAN_OPENING_SOURCE,
  kernel: (x) => Math.max(0.1 * x.area, LEAST_HIGH_OPENING),
};
