import { RULES } from '@firstfire/reference';
import { expect, it } from 'vitest';
import { CODE_SUBJECT_ROWS } from '../tools/code-subjects.ts';
import { coverageNow, coveragePage } from '../tools/coverage.ts';

it('docs/coverage.md is what the rules give (npm run coverage)', () => {
  expect(coverageNow()).toBe(coveragePage());
});

it('every subject of the codes names rules that there are, or says what is left open', () => {
  const known = new Set(RULES.map(({ id }) => id));
  const strange = CODE_SUBJECT_ROWS.flatMap(({ rules }) => rules.filter((id) => !known.has(id)));
  expect(strange).toEqual([]);
  expect(CODE_SUBJECT_ROWS.filter(({ rules, open }) => rules.length + open.length === 0)).toEqual([]);
});

it('every rule that stands in a code belongs to a subject', () => {
  const registered = new Set(CODE_SUBJECT_ROWS.flatMap(({ rules }) => rules));
  const coded = RULES.filter(({ editions }) => editions.some(({ edition }) => edition !== 'any'));
  expect(coded.map(({ id }) => id).filter((id) => !registered.has(id))).toEqual([]);
});
