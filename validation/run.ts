/** One suite run: how many figures agree, and which stands farthest out. */
import { type Deviation, deviation, type Suite } from './suite.ts';

export interface Row {
  readonly suite: Suite;
  /** Figures that are no written-down misfit. */
  readonly cases: number;
  readonly misfits: number;
  /** Worst deviation over the band, among the cases that count: 1 is its edge. */
  readonly worst: number;
  readonly outside: number;
  /** The case of that worst deviation. */
  readonly worstCase?: Deviation | undefined;
  /** Every figure, misfits too. */
  readonly deviations: readonly Deviation[];
}

const farther = (a: Deviation | undefined, b: Deviation): Deviation => (a && a.ofBand >= b.ofBand ? a : b);

export function farthest(deviations: readonly Deviation[]): Deviation | undefined {
  return deviations.reduce<Deviation | undefined>(farther, undefined);
}

export function runSuite(suite: Suite): Row {
  const misfits = new Set(suite.misfits?.flatMap((misfit) => misfit.cases));
  const deviations = suite.cases.map((one) => deviation(suite, one));
  const counted = deviations.filter((one) => !misfits.has(one.id));
  const worstCase = farthest(counted);
  return {
    suite,
    cases: counted.length,
    misfits: misfits.size,
    worst: worstCase?.ofBand ?? 0,
    outside: counted.filter((one) => !(one.ofBand <= 1)).length,
    worstCase,
    deviations,
  };
}

/** Figures inside their band. */
export const inside = ({ cases, outside }: Pick<Row, 'cases' | 'outside'>): number => cases - outside;
