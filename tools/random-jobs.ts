/**
 * Random jobs, seeded: an example with its numbers stretched, its words exchanged and some of its readings gone.
 * Near enough to real jobs to reach every verdict of a rule, far enough to find what nobody thought of.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type PlainJob, RECORD_BY_COLLECTION, surveyRecords } from '@firstfire/job';

const EXAMPLES = join(dirname(dirname(fileURLToPath(import.meta.url))), 'examples');

type Fields = Record<string, unknown>;

interface ReadingLike {
  value: unknown;
}

/** Small, fast and the same everywhere; George Marsaglia's xorshift32. */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

/** The example jobs as records of readings. */
export function exampleRecords(): readonly PlainJob[] {
  return readdirSync(EXAMPLES)
    .filter((name) => name.endsWith('.survey.json'))
    .sort()
    .map((name) => {
      const records = surveyRecords(JSON.parse(readFileSync(join(EXAMPLES, name), 'utf8')));
      if (!records.ok) throw new Error(name);
      return records.value as PlainJob;
    });
}

/** One random job. */
export function randomJob(examples: readonly PlainJob[], random: () => number): PlainJob {
  const example = examples[Math.floor(random() * examples.length)] ?? {};
  const wildness = random() ** 2;
  const job: Record<string, Fields | readonly Fields[]> = {};
  for (const [collection, part] of Object.entries(example)) {
    const change = (fields: Fields): Fields => changed(collection, fields, { random, wildness });
    job[collection] = Array.isArray(part)
      ? part.map((fields) => change(fields as Fields))
      : change(part as Fields);
  }
  return job;
}

interface Chance {
  readonly random: () => number;
  /** 0 hardly changes anything, 1 changes nearly all. */
  readonly wildness: number;
}

function changed(collection: string, fields: Fields, { random, wildness }: Chance): Fields {
  const out: Fields = {};
  for (const [name, reading] of Object.entries(fields)) {
    if (random() < 0.03 * wildness) continue;
    const touch = name !== 'id' && random() < 0.1 + 0.5 * wildness;
    out[name] = touch ? changedReading(collection, name, { reading, random }) : reading;
  }
  return out;
}

interface Touched {
  readonly reading: unknown;
  readonly random: () => number;
}

function changedReading(collection: string, name: string, { reading, random }: Touched): unknown {
  const value = (reading as ReadingLike).value;
  const field = RECORD_BY_COLLECTION.get(collection)?.fields[name];
  if (field?.type === 'choice') {
    return { ...(reading as object), value: field.choices[Math.floor(random() * field.choices.length)] };
  }
  if (field?.type !== 'quantity' || typeof value !== 'number') return reading;
  // Mostly a factor between a third and three, now and then a sign or a nothing.
  const odd = random();
  if (odd < 0.01) return { ...(reading as object), value: -value };
  if (odd < 0.02) return { ...(reading as object), value: 0 };
  return { ...(reading as object), value: value * 3 ** (2 * random() - 1) };
}
