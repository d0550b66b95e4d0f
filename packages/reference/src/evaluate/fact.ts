/**
 * A fact: what is known of one quantity of a job, in SI, or why nothing is.
 * *Not known*, *does not apply* and *zero* are three different things.
 */
import type { quantity } from '@firstfire/engine';

export type Fact = NumberFact | WordFact | UnknownFact | NotApplicableFact;

export interface NumberFact {
  readonly state: 'number';
  readonly value: number;
  readonly kind: quantity.Kind;
  /** 95 % half-width in SI; absent or zero where the value is exact. */
  readonly plusMinus?: number;
  /** Readings among its origins that nobody measured or read: names of readings. */
  readonly assumed?: readonly string[];
}

/** A choice or a yes or no, such as `outdoor` or `yes`. */
export interface WordFact {
  readonly state: 'word';
  readonly value: string;
  readonly assumed?: readonly string[];
}

export interface UnknownFact {
  readonly state: 'unknown';
  /** The readings that would supply it. */
  readonly missing: readonly string[];
}

export interface NotApplicableFact {
  readonly state: 'not-applicable';
}

export const NOT_APPLICABLE: NotApplicableFact = { state: 'not-applicable' };

/** What a rule is asked about: the whole job, or each of its heaters, segments, basins … */
export const SCOPES = [
  'job',
  'site',
  'basin',
  'heater',
  'segment',
  'laid-segment',
  'plastic-segment',
  'regulator',
  'appliance',
  'run',
  'filter',
  'water-state',
  'face',
] as const;

export type Scope = (typeof SCOPES)[number];

/** One thing of a scope: its id in the job, and what people call it. */
export interface Subject {
  readonly scope: Scope;
  readonly id: string;
  readonly label: string;
  /** Where names alone do not tell it: a phrase of `words`, and the names that fill its slots. */
  readonly said?: { readonly phrase: string; readonly slots: Readonly<Record<string, string>> };
}

/** A fact's name: its scope, a dot, its own name: `heater.inlet-pressure-minimum`. */
export type FactName = `${Scope}.${string}`;

/** Everything known of a job, as rules ask for it. A rule never sees a reading or a job. */
export interface FactBook {
  subjects(scope: Scope): readonly Subject[];
  /** A fact of the subject itself, or of the job or site when the name's scope is one of those. */
  fact(subject: Subject, name: FactName): Fact;
}
