/** Random readings of one field: what other jobs have there, or what its kind usually holds. */
import { quantity } from '@firstfire/engine';
import type { PlainJob, RECORD_BY_COLLECTION } from '@firstfire/job';

export type Random = () => number;
export type Fields = Record<string, unknown>;

/** Readings the examples have of each field, by `collection.field`. */
export type Corpus = ReadonlyMap<string, readonly unknown[]>;

type Records = typeof RECORD_BY_COLLECTION extends ReadonlyMap<string, infer R> ? R : never;

/** A field as its record declares it. */
export type DeclaredField = Records extends { readonly fields: Readonly<Record<string, infer F>> }
  ? F
  : never;
type Measured = Extract<DeclaredField, { readonly type: 'quantity' }>;

export interface FieldName {
  readonly collection: string;
  readonly name: string;
}

/** Small, fast and the same everywhere; George Marsaglia's xorshift32. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

/** One of several. */
export function pick<T>(all: readonly T[], random: Random): T {
  const one = all[Math.floor(random() * all.length)];
  if (one === undefined) throw new Error('nothing to pick from');
  return one;
}

/** Everything the examples say, field by field. */
export function corpusOf(examples: readonly PlainJob[]): Corpus {
  const corpus = new Map<string, unknown[]>();
  for (const [collection, part] of examples.flatMap((one) => Object.entries(one)))
    for (const fields of (Array.isArray(part) ? part : [part]) as Fields[])
      for (const [name, reading] of Object.entries(fields)) {
        const key = `${collection}.${name}`;
        corpus.set(key, [...(corpus.get(key) ?? []), reading]);
      }
  return corpus;
}

/** From where to where a kind mostly lies around a heater, SI. */
const USUAL: Readonly<Partial<Record<quantity.Kind, readonly [number, number]>>> = {
  length: [0.02, 60],
  diameter: [0.02, 0.5],
  area: [0.003, 3],
  volume: [2, 500],
  mass: [5, 300],
  time: [60, 1e5],
  angle: [0.02, 3],
  pressure: [500, 700_000],
  'pressure-difference': [0.5, 100_000],
  head: [0.2, 30],
  temperature: [275, 420],
  'temperature-difference': [1, 60],
  'heat-rate': [5_000, 300_000],
  power: [20, 3000],
  'volume-flow': [0.0005, 0.02],
  velocity: [0.2, 60],
  frequency: [10, 60],
  ratio: [0.01, 1.5],
  'volume-fraction': [5e-6, 1e-3],
  ph: [6.8, 8.2],
  voltage: [12, 290],
  current: [1, 60],
  'mass-concentration': [5e-4, 2],
  'sound-level': [35, 75],
};

const GAUGES = [22, 20, 18, 14, 12, 10, 8, 6, 4];
/** Days under other editions. */
export const DAYS: readonly string[] = [
  '1989-05-01',
  '2010-06-15',
  '2013-02-01',
  '2015-06-01',
  '2018-05-05',
  '2021-03-03',
  '2023-06-01',
  '2026-10-01',
  '2029-01-01',
];

/** Texts that say something to a rule; names and notes say nothing. */
const TEXTS: Readonly<Record<string, readonly string[]>> = {
  'heaters.made': DAYS.map((day) => day.slice(0, 7)),
  'spots.commonVent': ['stack'],
};

/** Places of which the project knows other rules, and one of which it knows none. */
export const PLACES: readonly (readonly [country: string, region: string])[] = [
  ['US', 'CO'],
  ['US', 'CA'],
  ['US', 'CA'],
  ['CA', 'QC'],
  ['CA', 'ON'],
];

/** A reading of a field; nothing where none can be made up. */
export function randomReading(at: FieldName, field: DeclaredField, { corpus, random }: Sources): unknown {
  const seen = corpus.get(`${at.collection}.${at.name}`);
  const how = { how: 'told' } as const;
  if (field.type === 'choice') return { ...how, value: pick(field.choices, random) };
  if (field.type === 'quantity') {
    const fresh = random() < 0.5 || seen === undefined ? usualReading(field, random) : undefined;
    return fresh ?? (seen === undefined ? undefined : stretched(pick(seen, random), random));
  }
  const texts = TEXTS[`${at.collection}.${at.name}`];
  if (texts !== undefined) return { ...how, value: pick(texts, random) };
  if (field.type === 'counts')
    return { ...how, value: Object.fromEntries(field.of.map((name) => [name, Math.floor(random() * 2.5)])) };
  return seen === undefined || field.type === 'text' ? undefined : pick(seen, random);
}

export interface Sources {
  readonly corpus: Corpus;
  readonly random: Random;
}

function usualReading(field: Measured, random: Random): unknown {
  if (field.kind === 'wire-size') return { value: pick(GAUGES, random), unit: 'AWG', how: 'told' };
  const usual = USUAL[field.kind];
  const unit = quantity.siUnit(field.kind);
  if (usual === undefined || quantity.findUnit(unit, field.kind) === undefined) return undefined;
  const [low, high] = [Math.max(usual[0], field.min ?? 0), Math.min(usual[1], field.max ?? usual[1])];
  if (random() < 0.1 && (field.min ?? 1) <= 0) return { value: 0, unit, how: 'told' };
  return low < high ? { value: low * (high / low) ** random(), unit, how: 'told' } : undefined;
}

/** The same with its number mostly a factor of up to three off, now and then more, of another sign, or nothing. */
export function stretched(reading: unknown, random: Random): unknown {
  const { value, unit } = reading as { value: unknown; unit?: string };
  if (typeof value !== 'number') return reading;
  if (unit === 'AWG') return { ...(reading as object), value: pick(GAUGES, random) };
  const odd = random();
  if (odd < 0.01) return { ...(reading as object), value: -value };
  if (odd < 0.05) return { ...(reading as object), value: 0 };
  const reach = random() < 0.15 ? 40 : 3;
  return { ...(reading as object), value: value * reach ** (2 * random() - 1) };
}
