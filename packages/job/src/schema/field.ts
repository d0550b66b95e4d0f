/**
 * What a field of a job may hold. A record is declared once from these; its validator, its JSON Schema, the survey
 * reader and the entry form all follow from the declaration.
 */
import type { quantity } from '@firstfire/engine';

export const HOW_KNOWN = ['measured', 'nameplate', 'drawing', 'told', 'assumed'] as const;

/** How a reading is known. */
export type HowKnown = (typeof HOW_KNOWN)[number];

/** One fact and where it comes from. The value stays as it was given; it is converted only to compute and to show. */
export interface Reading {
  /** A number in `unit`; a word for a choice; pairs in the two units for a curve; words or counts for a list. */
  readonly value: ReadingValue;
  /** Absent for words and counts. A curve has two, separated by a comma and a space. */
  readonly unit?: string;
  readonly how: HowKnown;
  readonly by?: string;
  /** When, ISO 8601. */
  readonly at?: string;
  readonly instrument?: string;
  /** 95 % half-width in the unit of the value, where it is not the usual one for how it is known. */
  readonly pm?: number;
  /** What was typed, where the unit cannot say it exactly, such as `27 ft 9-1/2 in`. */
  readonly typed?: string;
  readonly note?: string;
}

export type ReadingValue =
  | number
  | string
  | readonly (readonly [number, number])[]
  | Readonly<Record<string, number>>;

export interface QuantityField {
  readonly type: 'quantity';
  readonly kind: quantity.Kind;
  /** Allowed range in SI; a value outside is an issue on the reading. */
  readonly min?: number;
  readonly max?: number;
  /** Somebody's decision, such as a set temperature or a test pressure: it is what it is, and has no ±. */
  readonly decided?: true;
}

export interface ChoiceField {
  readonly type: 'choice';
  readonly choices: readonly string[];
}

/** Pairs of two quantities, such as flow and head, in rising order of the first. */
export interface CurveField {
  readonly type: 'curve';
  readonly x: quantity.Kind;
  readonly y: quantity.Kind;
  /** A pump's head falls with flow; a loss rises with it. */
  readonly trend: 'falls' | 'rises';
}

/** How many of each named thing, such as fittings. */
export interface CountsField {
  readonly type: 'counts';
  readonly of: readonly string[];
}

/** A nominal size by its name in the trade, never a number: `3/4`, `EHD 19`. */
export interface SizeField {
  readonly type: 'size';
}

/** Free text: a name, a note. */
export interface TextField {
  readonly type: 'text';
}

/** The name of a junction or the id of another element of the job. */
export interface PointField {
  readonly type: 'point';
}

/** A reading of another field, which judges it: what a variant puts in its place. */
export interface SubstituteField {
  readonly type: 'substitute';
}

export type Field = (
  | QuantityField
  | ChoiceField
  | CurveField
  | CountsField
  | SizeField
  | TextField
  | PointField
  | SubstituteField
) & {
  /** What it is and where one finds it, for the next developer; people read it in `words`. */
  readonly about: string;
};

type Rest<T> = Omit<T, 'type' | 'about'>;

export function measure(
  kind: quantity.Kind,
  about: string,
  range: { readonly min?: number; readonly max?: number; readonly decided?: true } = {},
): QuantityField & { about: string } {
  return { type: 'quantity', kind, about, ...range };
}

export function choose(choices: readonly string[], about: string): ChoiceField & { about: string } {
  return { type: 'choice', choices, about };
}

export function yesNo(about: string): ChoiceField & { about: string } {
  return choose(['yes', 'no'], about);
}

export function curve(axes: Rest<CurveField>, about: string): CurveField & { about: string } {
  return { type: 'curve', ...axes, about };
}

export function counts(of: readonly string[], about: string): CountsField & { about: string } {
  return { type: 'counts', of, about };
}

export function size(about: string): SizeField & { about: string } {
  return { type: 'size', about };
}

export function text(about: string): TextField & { about: string } {
  return { type: 'text', about };
}

export function point(about: string): PointField & { about: string } {
  return { type: 'point', about };
}

export function substitute(about: string): SubstituteField & { about: string } {
  return { type: 'substitute', about };
}
