/** Every citation can be said in every language: its words stand in the dictionary, the rest is a title or a number. */
import * as engine from '@firstfire/engine';
import * as job from '@firstfire/job';
import * as reference from '@firstfire/reference';
import * as sums from '@firstfire/sums';
import { AS_PRINTED, citedText, ENGLISH, partsOf } from '@firstfire/words';
import { describe, expect, it } from 'vitest';
import { sourcesIn, textOf } from './tree.ts';

const { sources } = ENGLISH;

/** A source in code, as opposed to a place such as `at: 'heater.off-switch'`. */
const WRITTEN = /\b(?:document|at):\s*(?:'([^']+)'|"([^"]+)")/g;
const FACT = /^[a-z-]+\.[a-z-]+$/;

/** Every text of every source that can be reached through the doors of the packages. */
function reached(doors: readonly object[]): Set<string> {
  const texts = new Set<string>();
  const seen = new Set<object>();
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || seen.has(value) || ArrayBuffer.isView(value)) return;
    seen.add(value);
    const { document, at, known } = value as Record<string, unknown>;
    if (typeof document === 'string' && typeof known === 'string') {
      for (const text of [document, at, known]) if (typeof text === 'string') texts.add(text);
    }
    for (const part of value instanceof Map ? value.values() : Object.values(value)) walk(part);
  };
  for (const door of doors) walk({ ...door });
  return texts;
}

/** And of every source written anywhere, for some are kept behind the doors. */
function written(): string[] {
  return ['engine', 'reference', 'sums', 'job']
    .flatMap((name) => sourcesIn(`packages/${name}/src`))
    .flatMap((path) => [...textOf(path).matchAll(WRITTEN)])
    .map((match) => match[1] ?? match[2] ?? '')
    .filter((text) => !FACT.test(text));
}

function howKnown(): string[] {
  const union = /type HowKnown =([^;]+);/.exec(textOf('packages/engine/src/trace/formula.ts'))?.[1] ?? '';
  return [...union.matchAll(/'([^']+)'/g)].map((match) => match[1] ?? '');
}

const editions = reference.CODE_EDITIONS.map(({ id }) => id);
const texts = [
  ...new Set([...reached([engine, job, reference, sums]), ...written(), ...howKnown(), ...editions]),
];

describe('citations', () => {
  it('are found', () => {
    expect(texts.length).toBeGreaterThan(300);
  });

  it('have words for all that is no title and no number', () => {
    const unsaid = texts.filter((text) => partsOf(text, sources).some((part) => part.as === undefined));
    expect(unsaid).toEqual([]);
  });

  it('need every phrase and every title that is kept for them', () => {
    const used = new Set(
      texts.flatMap((text) => partsOf(text, sources)).flatMap(({ text, sign }) => [text, sign]),
    );
    expect([...Object.keys(sources), ...AS_PRINTED].filter((phrase) => !used.has(phrase))).toEqual([]);
  });

  it('stay in English as they are written', () => {
    expect(texts.filter((text) => citedText(text, sources) !== text)).toEqual([]);
  });
});
