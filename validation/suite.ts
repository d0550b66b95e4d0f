/**
 * One published source held against the project: its cases, the band its own rounding or claim allows, and the
 * misfits that are known and written down.
 */
import type { Result } from '@firstfire/engine';

export interface Case {
  readonly id: string;
  /** The printed figure, in the unit of the suite. */
  readonly published: number;
  /** Our figure in the same unit; computed when the run asks for it. */
  readonly computed: () => number | Result<number>;
}

export type Band =
  /** Greatest |computed/published − 1|. */
  | { readonly relative: number }
  /** Greatest |computed − published|, in the unit of the suite. */
  | { readonly absolute: number }
  /** The larger of the two, where a table rounds to few digits. */
  | { readonly relative: number; readonly absolute: number };

export interface Misfit {
  /** Ids of the cases outside the band. Each must be outside it, or the entry is stale and the run fails. */
  readonly cases: readonly string[];
  /** Why, in one sentence. */
  readonly because: string;
}

export type SuiteKind =
  /** Figures printed in a document. */
  | 'published'
  /** What an independent program, or a standard's own constants, gave once: nobody published it, it is not counted. */
  | 'stored'
  /** A general-purpose library run beside ours in the test. */
  | 'library'
  /** Published figures beside an estimate of ours, in a band that we found and no source claims: shown, not counted. */
  | 'estimate'
  /** *Common practice, no source*, or *from memory*: shown, never counted. */
  | 'practice';

export interface Suite {
  /** Unique, `area/source-table`. */
  readonly id: string;
  readonly area:
    | 'gas'
    | 'heat'
    | 'water'
    | 'network'
    | 'properties'
    | 'altitude'
    | 'climate'
    | 'pool-rules'
    | 'electric'
    | 'air'
    | 'siting'
    | 'vent'
    | 'chemistry'
    | 'combustion'
    | 'efficiency'
    | 'relief'
    | 'handling';
  readonly kind: SuiteKind;
  /** The document that counts as one source, such as `International Fuel Gas Code 2018`. */
  readonly document: string;
  /** Table, section or example, and where it was read. */
  readonly at: string;
  /** What is compared, and in which unit. */
  readonly quantity: string;
  readonly band: Band;
  /** Why the band is what it is. */
  readonly bandBecause: string;
  readonly cases: readonly Case[];
  /** The figures are carried by a table or a rule as they are printed; nothing but the carrying is checked. */
  readonly carried?: true;
  readonly misfits?: readonly Misfit[];
}

export interface Deviation {
  readonly id: string;
  readonly published: number;
  readonly computed: number;
  /** Deviation over band: at most 1 is inside. */
  readonly ofBand: number;
  readonly relative: number;
}

/** Runs one case against the band of its suite. */
export function deviation(suite: Suite, one: Case): Deviation {
  const answer = one.computed();
  const computed = typeof answer === 'number' ? answer : answer.ok ? answer.value : Number.NaN;
  const difference = Math.abs(computed - one.published);
  const relative = difference / Math.abs(one.published || 1);
  return {
    id: one.id,
    published: one.published,
    computed,
    relative,
    ofBand: difference / width(suite.band, one.published),
  };
}

function width(band: Band, published: number): number {
  const relative = 'relative' in band ? band.relative * Math.abs(published) : 0;
  const absolute = 'absolute' in band ? band.absolute : 0;
  return Math.max(relative, absolute, Number.MIN_VALUE);
}
