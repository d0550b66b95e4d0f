import { expect, it } from 'vitest';
import { proofPage, proofPageNow } from '../tools/proof-page.ts';
import { FULL_SOAK, soaked } from '../tools/soaked.ts';
import { UNREACHED, unexplained } from '../tools/unreached.ts';

it('docs/proof.md is what the proofs give (npm run coverage)', () => {
  expect(proofPageNow()).toBe(proofPage());
});

it('one soak was a full one, and all that the last never reached has a reason', () => {
  const runs = soaked();
  const never = runs.at(-1)?.never ?? [];
  expect(runs[0]?.jobs).toBeGreaterThanOrEqual(FULL_SOAK);
  expect(unexplained(never)).toEqual([]);
  expect(Object.keys(UNREACHED).filter((name) => !never.includes(name))).toEqual([]);
});
