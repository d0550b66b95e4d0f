/**
 * Random jobs, seeded: an example somewhere else on another day, with its numbers stretched, its words exchanged, some
 * of its readings gone and some that it never had. Near enough to real jobs to reach every verdict of a rule, far
 * enough to find what nobody thought of.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type PlainJob, RECORD_BY_COLLECTION, surveyRecords } from '@firstfire/job';
import {
  type Corpus,
  corpusOf,
  DAYS,
  type DeclaredField,
  type Fields,
  PLACES,
  pick,
  type Random,
  randomReading,
  stretched,
} from './random-values.ts';

const EXAMPLES = join(dirname(dirname(fileURLToPath(import.meta.url))), 'examples');

/** What random jobs are made from. */
export interface Examples {
  readonly jobs: readonly PlainJob[];
  readonly corpus: Corpus;
}

/** The example jobs as records of readings. */
export function exampleRecords(): Examples {
  const jobs = readdirSync(EXAMPLES)
    .filter((name) => name.endsWith('.survey.json'))
    .sort()
    .map((name) => {
      const records = surveyRecords(JSON.parse(readFileSync(join(EXAMPLES, name), 'utf8')));
      if (!records.ok) throw new Error(name);
      return records.value as PlainJob;
    });
  return { jobs, corpus: corpusOf(jobs) };
}

interface Chance {
  readonly random: Random;
  readonly corpus: Corpus;
  /** 0 hardly changes anything, 1 changes nearly all. */
  readonly wildness: number;
  /** 0 adds nothing, 1 nearly every reading that may be there. */
  readonly growth: number;
}

/** One random job. */
export function randomJob({ jobs, corpus }: Examples, random: Random): PlainJob {
  const example = smaller(pick(jobs, random), pick(jobs, random));
  const chance: Chance = { random, corpus, wildness: random() ** 2, growth: random() ** 2 };
  const sketchiness = random() < 0.2 ? 0.4 : 0.02;
  const job: Record<string, Fields | readonly Fields[]> = {};
  for (const [collection, part] of Object.entries(example)) {
    const change = (fields: Fields): Fields => changed(collection, fields, chance);
    // A whole part of the survey was never made.
    if (collection !== 'site' && random() < sketchiness) continue;
    job[collection] = Array.isArray(part) ? part.map((one) => change(one as Fields)) : change(part as Fields);
  }
  return random() < 0.6 ? moved(job, random) : job;
}

/** Small jobs are quick: more of them go into an hour. */
function smaller(one: PlainJob, other: PlainJob): PlainJob {
  return sizeOf(one) <= sizeOf(other) ? one : other;
}

const sizes = new WeakMap<PlainJob, number>();

function sizeOf(job: PlainJob): number {
  const known = sizes.get(job) ?? JSON.stringify(job).length;
  sizes.set(job, known);
  return known;
}

/** The same job at another address on another day. */
function moved(job: Record<string, Fields | readonly Fields[]>, random: Random): PlainJob {
  const [country, region] = pick(PLACES, random);
  const site = { ...(job['site'] as Fields) };
  site['country'] = { value: country, how: 'told' };
  site['region'] = { value: region, how: 'told' };
  const date = { value: pick(DAYS, random), how: 'told' };
  return { ...job, site, job: { ...(job['job'] as Fields), date } };
}

function changed(collection: string, fields: Fields, chance: Chance): Fields {
  const { random, wildness, growth } = chance;
  const known = RECORD_BY_COLLECTION.get(collection)?.fields ?? {};
  const out: Fields = {};
  for (const [name, reading] of Object.entries(fields)) {
    if (name !== 'id' && random() < 0.05 * wildness) continue;
    const touch = name !== 'id' && random() < 0.1 + 0.5 * wildness;
    out[name] = touch ? changedReading({ collection, name, field: known[name] }, reading, chance) : reading;
  }
  for (const [name, field] of Object.entries(known)) {
    if (name in fields || random() >= growth) continue;
    const reading = randomReading({ collection, name }, field, chance);
    if (reading !== undefined) out[name] = reading;
  }
  return out;
}

interface Place {
  readonly collection: string;
  readonly name: string;
  readonly field: DeclaredField | undefined;
}

function changedReading({ field, ...at }: Place, reading: unknown, chance: Chance): unknown {
  if (field?.type === 'choice') return { ...(reading as object), value: pick(field.choices, chance.random) };
  if (field?.type !== 'quantity') return reading;
  if (chance.random() < 0.2) return randomReading(at, field, chance) ?? reading;
  return stretched(reading, chance.random);
}
