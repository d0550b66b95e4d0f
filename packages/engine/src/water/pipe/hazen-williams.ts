/**
 * Head lost to friction by Hazen–Williams, the rule most pool tables and plumbing codes are printed from.
 *
 *     h = k·L·Q^a / (C^a·D^b)
 *
 * How sources disagree: the rule is printed with slightly different constants, up to 1.5 % apart. EPANET's
 * 4.727, 1.852 and 4.871 (ft, ft3/s) are followed here; `HAZEN_WILLIAMS_FORMS` holds the others, for the tables
 * made from them. The exponents are rounded from V = 1.318·C·R^0.63·S^0.54.
 *
 * It knows no viscosity: it is right for water near 60 °F in pipe of 2 in and more at a few ft/s, and up to 10 %
 * off elsewhere. Use `darcyLoss` for what a gauge will read.
 *
 * Source: EPANET 2 Users Manual (EPA/600/R-00/057), Table 3.1. Range: C from 40 to 160.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: 60 gpm, 100 ft of 2.067 in, C = 150 → 5.58 ft.
 */
import { CUBIC_FOOT, FOOT, INCH, MINUTE, PSI, STANDARD_GRAVITY, US_GALLON } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';
import { DIAMETER, FLOW, LENGTH, LOSS } from '../variables.ts';

export interface HazenWilliamsForm {
  /** k in SI: h and L in m, Q in m3/s, D in m. */
  readonly constant: number;
  readonly flowExponent: number;
  readonly diameterExponent: number;
  readonly source: Source;
}

const GPM = US_GALLON / MINUTE;
/** Head of one psi in conventional water of 1000 kg/m3: 2.307 ft. */
const PSI_HEAD = PSI / (1000 * STANDARD_GRAVITY);

/** The printed forms of the rule, each brought to SI from the units of its print. */
export const HAZEN_WILLIAMS_FORMS = {
  epanet: {
    constant: (4.727 / CUBIC_FOOT ** 1.852) * FOOT ** 4.871,
    flowExponent: 1.852,
    diameterExponent: 4.871,
    source: {
      document: 'EPANET 2 Users Manual (EPA/600/R-00/057)',
      at: 'Table 3.1',
      known: 'read in a public copy',
    },
  },
  plasticPipe: {
    constant: ((0.2083 / 100) * 100 ** 1.852 * INCH ** 4.8655) / GPM ** 1.852,
    flowExponent: 1.852,
    diameterExponent: 4.8655,
    source: {
      document: 'Plastic Pipe and Fittings Association, PVC water piping',
      at: 'friction-loss equation',
      known: 'read in a public copy',
    },
  },
  sprinkler: {
    constant: ((4.52 * PSI_HEAD) / FOOT / GPM ** 1.85) * INCH ** 4.87,
    flowExponent: 1.85,
    diameterExponent: 4.87,
    source: { document: 'NFPA 13', at: 'friction-loss equation', known: 'from memory' },
  },
  metric: {
    constant: 10.67,
    flowExponent: 1.852,
    diameterExponent: 4.87,
    source: { document: 'Hazen–Williams equation in SI', known: 'read in a public copy' },
  },
} as const satisfies Readonly<Record<string, HazenWilliamsForm>>;

export interface HazenWilliamsRun {
  /** D, m. */
  readonly insideDiameter: number;
  /** L, m. */
  readonly length: number;
  /** C, dimensionless by custom. */
  readonly cFactor: number;
  /** Q, m3/s. */
  readonly flow: number;
}

/** Head lost (m) by one of the printed forms; no range check. */
export function hazenWilliamsBy(form: HazenWilliamsForm, x: HazenWilliamsRun): number {
  const perMetre =
    form.constant *
    (Math.abs(x.flow) / x.cFactor) ** form.flowExponent *
    x.insideDiameter ** -form.diameterExponent;
  return Math.sign(x.flow) * x.length * perMetre;
}

export const C_FACTOR = { symbol: 'C', kind: 'ratio', min: 40, max: 160 } as const;

/** Head lost along the run, m; signed like the flow. */
export const hazenWilliamsLoss: Formula<HazenWilliamsRun> = {
  id: 'water.hazen-williams-loss',
  equation: 'h = 10.667·L·(Q/C)^1.852/D^4.871',
  inputs: { insideDiameter: DIAMETER, length: LENGTH, cFactor: C_FACTOR, flow: FLOW },
  result: LOSS,
  source: HAZEN_WILLIAMS_FORMS.epanet.source,
  kernel: (x) => hazenWilliamsBy(HAZEN_WILLIAMS_FORMS.epanet, x),
};

export interface HazenWilliamsHead {
  readonly insideDiameter: number;
  readonly length: number;
  readonly cFactor: number;
  /** h, m. */
  readonly head: number;
}

/** Flow (m3/s) that a head drives through the run: the inverse of `hazenWilliamsLoss`. */
export const hazenWilliamsFlow: Formula<HazenWilliamsHead> = {
  id: 'water.hazen-williams-flow',
  equation: 'Q = C·(h·D^4.871/(10.667·L))^(1/1.852)',
  inputs: {
    insideDiameter: DIAMETER,
    length: { symbol: 'L', kind: 'length', min: 1e-6, max: 1e5 },
    cFactor: C_FACTOR,
    head: { symbol: 'h', kind: 'head', min: 0, max: 1e5 },
  },
  result: FLOW,
  source: HAZEN_WILLIAMS_FORMS.epanet.source,
  kernel: (x) => {
    const { constant, diameterExponent, flowExponent } = HAZEN_WILLIAMS_FORMS.epanet;
    const perFlow = (x.head * x.insideDiameter ** diameterExponent) / (constant * x.length);
    return x.cFactor * perFlow ** (1 / flowExponent);
  },
};
