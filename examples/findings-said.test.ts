/** What is said of every finding of the examples, in each language and both unit systems. */
import { readFileSync } from 'node:fs';
import { jobViewOf, readJobFile, study } from '@firstfire/job';
import type { Finding } from '@firstfire/reference';
import { outcomeText, type Reader, speechOf, unitsOf } from '@firstfire/words';
import { expect, it } from 'vitest';

const EXAMPLES = ['house-pool', 'public-pool', 'swap', 'unfinished', 'winter-propane'];

async function reader(locale: string, system: Reader['system']): Promise<Reader> {
  const speech = await speechOf(locale);
  if (speech === undefined) throw new Error(locale);
  return { speech, system };
}

function findingsOf(name: string): readonly Finding[] {
  const file = new URL(`./${name}.job.json`, import.meta.url);
  const read = readJobFile(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(name);
  const view = jobViewOf(read.value.document);
  return study(view, { today: '2026-10-01' }).lines.flatMap((line) => line.findings);
}

const FINDINGS = EXAMPLES.flatMap(findingsOf);

it.each(['en-US', 'es-ES', 'fr-CA'].flatMap((locale) => [[locale, 'us'] as const, [locale, 'si'] as const]))(
  'of a finding leave nothing open and nothing in another language, in %s with %s units',
  async (locale, system) => {
    const who = await reader(locale, system);
    const texts = FINDINGS.map((finding) => outcomeText(finding, unitsOf(finding, who)));
    expect(texts.length).toBeGreaterThan(300);
    expect(texts.filter((text) => /\{[a-z-]+\}|undefined|NaN|Infinity/.test(text))).toEqual([]);
    // A point before one or two figures is no mark of Madrid or Montreal; before three it parts thousands in Madrid.
    const points = texts.filter((text) => /\d\.\d{1,2}(?!\d)/.test(text));
    expect(locale === 'en-US' ? [] : points).toEqual([]);
  },
);
