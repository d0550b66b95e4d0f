/**
 * The weight nearly every healthy worker can lift with two hands in a given posture: the revised lifting equation.
 *
 *     RWL = 51 lb·HM·VM·DM·AM·FM·CM
 *     HM = 10/H        VM = 1 − 0.0075·|V − 30|        DM = 0.82 + 1.8/D        AM = 1 − 0.0032·A      (in, degrees)
 *
 * Hands nearer than 10 in count as 10, a way shorter than 10 in as 10. Beyond 25 in, 70 in of height or of way, or a
 * twist of 135° a multiplier is zero: no weight is recommended at all. It does not speak of carrying, one hand, slippery
 * ground, narrow places or help: a step that holds any of these wants equipment.
 *
 * How sources disagree: the manual prints a metric form too (23 kg, 25/H, 0.003·|V − 75|, 4.5/D in cm), which rounds
 * the inches and lies up to 3 % lower. The US form is followed, because the worked examples are in it.
 *
 * Source: NIOSH 94-110 (1994), section 1.3 and Tables 1 to 7 (from memory).
 * Range: H 0 to 25 in, V 0 to 70 in, D 0 to 70 in, A 0 to 135°, up to 15 lifts a minute.
 * Errors: range issues of `evaluate`: outside the range nothing may be lifted, and the issue says what bounds it.
 * Worked example: loading stock, H 23 in, V 15 in, D 49 in, no twist, fair grip, seldom → 16.1 lb; the manual, with
 * each factor rounded to two digits, 16.3 lb.
 */
import { INCH, POUND } from '../quantity/index.ts';
import { evaluate, type Formula, type Recorder, type Result, type Source } from '../trace/index.ts';
import { frequencyMultiplier, type LiftPace, WAIST } from './lift-frequency.ts';

export const LIFTING_SOURCE: Source = {
  document: 'NIOSH 94-110, Applications Manual for the Revised NIOSH Lifting Equation',
  at: 'section 1.3, Tables 1 to 7',
  known: 'from memory',
};

/** LC, kg, in the best of postures. */
const LOAD_CONSTANT = 51 * POUND;
/** Inches. */
const NEAREST = 10;
const LEVEL = 30;
const DEGREE = Math.PI / 180;

/** How the hands hold it. */
export const COUPLINGS = ['good', 'fair', 'poor'] as const;
export type Coupling = (typeof COUPLINGS)[number];

/** CM with the hands low and at waist height or above. Table 7. */
const COUPLING_MULTIPLIERS: Readonly<Record<Coupling, readonly [low: number, high: number]>> = {
  good: [1, 1],
  fair: [0.95, 1],
  poor: [0.9, 0.9],
};

/** CM of a grip with the hands at a height, m. */
export function couplingMultiplier(coupling: Coupling, vertical: number): number {
  return COUPLING_MULTIPLIERS[coupling][vertical < WAIST ? 0 : 1];
}

export interface LiftPosture {
  /** H, hands from the middle between the ankles, m. */
  readonly horizontal: number;
  /** V, hands above the floor, m. */
  readonly vertical: number;
  /** D, way up or down, m. */
  readonly distance: number;
  /** A, twist, rad. */
  readonly asymmetry: number;
}

/** HM, VM, DM and AM. Worked example: H 18 in, V 15 in, D 21 in, 45° → 0.56, 0.89, 0.91, 0.86. */
export function postureMultipliers(
  x: LiftPosture,
): readonly [HM: number, VM: number, DM: number, AM: number] {
  return [
    NEAREST / Math.max(x.horizontal / INCH, NEAREST),
    1 - 0.0075 * Math.abs(x.vertical / INCH - LEVEL),
    0.82 + 1.8 / Math.max(x.distance / INCH, NEAREST),
    1 - 0.0032 * (x.asymmetry / DEGREE),
  ];
}

export interface LiftTask extends LiftPosture {
  /** FM. */
  readonly frequencyFactor: number;
  /** CM. */
  readonly couplingFactor: number;
}

/** Recommended weight limit, kg. */
export const liftLimit: Formula<LiftTask> = {
  id: 'handling.lift-limit',
  equation: 'RWL = 51 lb·HM·VM·DM·AM·FM·CM',
  inputs: {
    horizontal: { symbol: 'H', kind: 'length', min: 0, max: 25 * INCH },
    vertical: { symbol: 'V', kind: 'length', min: 0, max: 70 * INCH },
    distance: { symbol: 'D', kind: 'length', min: 0, max: 70 * INCH },
    asymmetry: { symbol: 'A', kind: 'angle', min: 0, max: 135 * DEGREE },
    frequencyFactor: { symbol: 'FM', kind: 'ratio', min: 0, max: 1 },
    couplingFactor: { symbol: 'CM', kind: 'ratio', min: 0, max: 1 },
  },
  result: { symbol: 'RWL', kind: 'mass' },
  source: LIFTING_SOURCE,
  kernel: (x) =>
    postureMultipliers(x).reduce((product, factor) => product * factor, LOAD_CONSTANT) *
    x.frequencyFactor *
    x.couplingFactor,
};

/** Recommended weight limit of a lift told as people tell it: posture, grip, pace. */
export function liftLimitOf(
  posture: LiftPosture,
  { coupling, ...pace }: { readonly coupling: Coupling } & Omit<LiftPace, 'vertical'>,
  recorder?: Recorder,
): Result<number> {
  const { vertical } = posture;
  return evaluate(
    liftLimit,
    {
      ...posture,
      frequencyFactor: frequencyMultiplier({ ...pace, vertical }),
      couplingFactor: couplingMultiplier(coupling, vertical),
    },
    recorder,
  );
}
