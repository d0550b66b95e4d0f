/**
 * A unit: its name, the kinds it serves, how it becomes SI, and how else people write it.
 */
import type { GasBase } from './gas-base.ts';
import type { Kind } from './kinds.ts';

export interface Unit {
  /** Plain ASCII name, unique in the table. */
  readonly id: string;
  readonly kinds: readonly Kind[];
  /** SI value = (value + offset) · factor. */
  readonly factor: number;
  readonly offset: number;
  readonly aliases: readonly string[];
  /** Aliases that need a word to the reader, with the code of that word. */
  readonly noted: Readonly<Record<string, ParseNote>>;
  /** As the trade prints it; made from `id` when absent. */
  readonly label?: string;
  /** Upper and lower case differ in meaning (mW, MW): never read with other case. */
  readonly cased?: true;
  /** A gauge number, not a multiple of anything. */
  readonly gauge?: true;
  /** The reference state of a standard gas volume. */
  readonly base?: GasBase;
}

/** What a reading took for granted, as codes; the wording belongs elsewhere. */
export const PARSE_NOTES = [
  /** "Btu" was read as Btu/h. */
  'per-hour-understood',
  /** M was read as one thousand. */
  'm-is-thousand',
  /** "oz" was read as ounces per square inch. */
  'ounce-is-pressure',
  /** "ppm" of a solution was read as mg/L. */
  'ppm-is-mg-per-litre',
  /** The gas base was not written; the usual one was taken. */
  'base-understood',
  /** The text could only be read with the other decimal sign than the one asked for. */
  'other-decimal-sign',
] as const;

export type ParseNote = (typeof PARSE_NOTES)[number];

export type UnitExtras = Partial<Pick<Unit, 'offset' | 'noted' | 'label' | 'cased' | 'gauge' | 'base'>>;

/** Declares a unit; `aliases` stand in one string, parted by bars. */
export function unit(
  [id, aliases = '']: readonly [id: string, aliases?: string],
  kinds: readonly Kind[],
  factor: number,
  extras: UnitExtras = {},
): Unit {
  const others = aliases === '' ? [] : aliases.split('|');
  return { offset: 0, noted: {}, ...extras, id, kinds, factor, aliases: others };
}
