/**
 * Figures that pool codes ask of the water: velocities, turnover, filters, meters, drains. By jurisdiction, SI.
 *
 * Each says how it is known. A figure from memory is no code requirement until the edition in force has been read.
 */
import { quantity, type Source } from '@firstfire/engine';

const { FAHRENHEIT_STEP, FOOT, HOUR, INCH, MINUTE, PSI, US_GALLON } = quantity;

const NEVADA: Source = {
  document: 'Nevada Administrative Code',
  at: 'NAC 444.160',
  known: 'read in a public copy',
};
const PIMA: Source = {
  document: 'Pima County (Arizona) Code',
  at: '8.32.160',
  known: 'read in a public copy',
};
const TITLE_24: Source = {
  document: 'California Energy Code (Title 24 Part 6)',
  at: '150.0(p)',
  known: 'read in a public copy',
};
const ISPSC_2021: Source = {
  document: 'International Swimming Pool and Spa Code 2021',
  at: 'Section 311.3',
  known: 'from memory',
};
const MAHC: Source = {
  document: 'CDC Model Aquatic Health Code',
  at: '4.7.1',
  known: 'from memory',
};
const FLORIDA: Source = { document: 'Florida Building Code', at: 'Section 454', known: 'from memory' };

export interface VelocityLimit {
  readonly line: 'return' | 'suction' | 'copper-return' | 'gravity';
  /** Greatest velocity, m/s. */
  readonly velocity: number;
  readonly source: Source;
}

function limit(line: VelocityLimit['line'], feetPerSecond: number, source: Source): VelocityLimit {
  return { line, velocity: feetPerSecond * FOOT, source };
}

/** Greatest velocity of water in pool pipe. */
export const VELOCITY_LIMITS: readonly VelocityLimit[] = [
  limit('return', 10, NEVADA),
  limit('copper-return', 6, NEVADA),
  limit('suction', 6, NEVADA),
  limit('return', 10, PIMA),
  limit('suction', 6, PIMA),
  limit('return', 8, { ...TITLE_24, known: 'from memory' }),
  limit('suction', 6, { ...TITLE_24, known: 'from memory' }),
  limit('return', 8, ISPSC_2021),
  limit('suction', 6, ISPSC_2021),
  limit('return', 8, MAHC),
  limit('suction', 6, MAHC),
  limit('return', 10, FLORIDA),
  limit('suction', 6, FLORIDA),
  limit('gravity', 3, FLORIDA),
];

export interface TurnoverLimit {
  readonly use: string;
  /** Longest turnover time, s. */
  readonly time: number;
  readonly source: Source;
}

const WISCONSIN: Source = {
  document: 'Wisconsin Administrative Code',
  at: 'SPS 390.14, Table 390.14-1',
  known: 'read in a public copy',
};
const DC_ISPSC: Source = {
  document: 'D.C. Municipal Regulations 25-C409 (ISPSC 2012)',
  at: 'Table 407.2',
  known: 'read in a public copy',
};

function hours(use: string, value: number, source: Source): TurnoverLimit {
  return { use, time: value * HOUR, source };
}

/** Longest turnover by use. */
export const TURNOVER_LIMITS: readonly TurnoverLimit[] = [
  hours('swimming', 6, WISCONSIN),
  hours('activity', 2, WISCONSIN),
  hours('interactive-play', 0.5, WISCONSIN),
  hours('lap-lanes', 6, WISCONSIN),
  hours('leisure-river', 2, WISCONSIN),
  hours('plunge', 1, WISCONSIN),
  hours('runout-slide', 1, WISCONSIN),
  hours('vortex', 1, WISCONSIN),
  hours('wave', 2, WISCONSIN),
  hours('cold-soak', 4, WISCONSIN),
  hours('wading', 1, WISCONSIN),
  hours('whirlpool', 0.5, WISCONSIN),
  hours('wading', 1, DC_ISPSC),
  hours('public-pool', 8, PIMA),
  hours('indoor-exercise', 6, PIMA),
];

/**
 * Longest turnover (s) of a class A, B or C pool by its average depth (m): 1.5 h for each foot, 6 h at most.
 * Source: ISPSC 2012 Table 407.2, quoted in D.C. Municipal Regulations 25-C409. Example: 3 ft → 4.5 h.
 */
export function turnoverByDepth(averageDepth: number): number {
  return Math.min(1.5 * (averageDepth / FOOT), 6) * HOUR;
}

/**
 * Greatest filtration flow (m3/s) of a residential pool of a given volume (m3): its volume in 6 h, or 36 gpm if that
 * is more. Source: California Energy Code 150.0(p)1, read in a summary. Example: 20,000 gal → 55.6 gpm.
 */
export function residentialFiltrationFlow(volume: number): number {
  return Math.max(volume / (6 * HOUR), (36 * US_GALLON) / MINUTE);
}

export interface FilterRule {
  readonly filter: 'high-rate-sand' | 'rapid-sand' | 'cartridge';
  /** Against the clean gauge figure, or between inlet and outlet. */
  readonly measure: 'rise-over-clean' | 'inlet-to-outlet';
  /** Pa: the soil with which a pump must still give its design flow. */
  readonly pressure: number;
  readonly source: Source;
}

const WYOMING: Source = {
  document: 'Wyoming Administrative Code',
  at: '010-4, Section 4-9',
  known: 'read in a public copy',
};

/** How soiled a filter the pump must overcome. Diatomaceous earth goes by its marking. */
export const FILTER_RULES: readonly FilterRule[] = [
  { filter: 'high-rate-sand', measure: 'rise-over-clean', pressure: 15 * PSI, source: WYOMING },
  { filter: 'rapid-sand', measure: 'inlet-to-outlet', pressure: 8 * PSI, source: WYOMING },
  { filter: 'cartridge', measure: 'inlet-to-outlet', pressure: 10 * PSI, source: WYOMING },
];

/** Flow meters: least capacity over the design flow, accuracy, and straight pipe in diameters. */
export const FLOW_METER_RULE = {
  capacityOverDesign: 1.5,
  accuracy: 0.05,
  diametersBefore: 10,
  diametersAfter: 5,
  source: { document: 'CDC Model Aquatic Health Code', at: '4.7.1.9', known: 'read in a public copy' },
} as const satisfies { readonly source: Source; readonly [name: string]: number | Source };

/** Suction outlets of public pools. */
export const SUCTION_OUTLET_RULE = {
  /** Two outlets on one plane closer than this count as one, m. */
  leastSpacing: 3 * FOOT,
  /** An outlet that this element cannot cover is unblockable, m. */
  blockingElement: [18 * INCH, 23 * INCH],
  source: {
    document: '15 U.S.C. 8001–8008, CPSC business guidance',
    at: 'drain covers; blocking element from memory (APSP-16)',
    known: 'read in a public copy',
  },
} as const;

/** Freeze protection of pool-pump motors as sold. */
export const FREEZE_RULE = {
  /** Highest air set point, K. */
  airTemperature: 273.15 + 8 * FAHRENHEIT_STEP,
  /** Longest run before it looks again, s. */
  run: HOUR,
  /** Greatest share of full speed. */
  speedRatio: 0.5,
  source: { document: '10 CFR 431.485(d)', known: 'read in a public copy' },
} as const;

/** Warmest water a pool or spa control may be set to, K (104 °F). */
export const WARMEST_WATER = {
  temperature: 273.15 + 40,
  source: { document: '104 °F (40 °C) upper limit', known: 'common practice, no source' },
} as const;
