import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { README, readmeWithSamples } from './readme.ts';

it('the README shows what the program prints today (npm run examples)', () => {
  const text = readFileSync(README, 'utf8');
  expect(readmeWithSamples(text)).toBe(text);
});
