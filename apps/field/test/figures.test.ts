/** What the screens say of a finding leaves no slot of a sentence open. */
import { readFileSync } from 'node:fs';
import { jobViewOf, readJobFile, study } from '@firstfire/job';
import { speechOf } from '@firstfire/words';
import { expect, it } from 'vitest';
import { outcomeText, unitsOf } from '../src/text/figures.ts';

it.each(['en', 'es', 'fr'])('says why with the figures that decided, in %s', async (language) => {
  const speech = await speechOf(language);
  if (speech === undefined) throw new Error(language);
  const texts = ['house-pool', 'public-pool', 'swap'].flatMap((name) => {
    const read = readJobFile(
      readFileSync(new URL(`../../../examples/${name}.job.json`, import.meta.url), 'utf8'),
    );
    if (!read.ok) throw new Error(name);
    const { lines } = study(jobViewOf(read.value.document), { today: '2026-10-01', uncertainty: false });
    const reader = { speech, system: 'us' } as const;
    return lines
      .flatMap((line) => line.findings)
      .map((finding) => outcomeText(finding, { reader, units: unitsOf(finding, 'us') }));
  });
  expect(texts.length).toBeGreaterThan(200);
  expect(texts.filter((text) => /\{[a-z-]+\}/.test(text))).toEqual([]);
});
