import { describe, expect, it } from 'vitest';
import { issueSentence } from './issue-sentence.ts';
import { ENGLISH } from './say.ts';

const words = ENGLISH;
const show = (value: number): string => `${value} ft`;
const say = (issue: Parameters<typeof issueSentence>[0]): string => issueSentence(issue, { words, show });

describe('the sentence of an issue', () => {
  it('names the value and the range it left', () => {
    expect(say({ code: 'out-of-range', where: 'length', found: -3, min: 0, max: 500 })).toBe(
      'length: -3 ft is outside the range 0 ft … 500 ft.',
    );
    expect(say({ code: 'out-of-range', where: 'length', found: 0, min: 1 })).toBe(
      'length: 0 ft is outside the range ≥ 1 ft.',
    );
  });

  it('says why where there is no range to show', () => {
    expect(
      say({ code: 'out-of-range', where: 'start', found: '-500 °F', reason: 'below-absolute-zero' }),
    ).toBe('start: -500 °F cannot be: it lies below absolute zero.');
  });

  it('joins reason and expectation when a text was not understood', () => {
    const issue = { code: 'not-understood', where: 'length', found: '12', reason: 'unit-missing' } as const;
    expect(say({ ...issue, expected: ['ft', 'm'] })).toBe(
      'length: “12” was not understood: the unit is missing. Expected: ft, m.',
    );
    expect(say(issue)).toBe('length: “12” was not understood: the unit is missing.');
  });

  it('stands without a reason, a value or a place', () => {
    expect(say({ code: 'contradiction', where: 'width', found: 9, max: 5 })).toBe(
      'width: 9 ft does not go with the other values; allowed: ≤ 5 ft.',
    );
    expect(say({ code: 'contradiction', where: 'hopper', max: 5 })).toBe(
      'hopper: does not go with the other values; allowed: ≤ 5 ft.',
    );
    expect(say({ code: 'ill-formed', where: '', reason: 'survey-object-expected' })).toBe(
      'a survey is an object with one member for each record.',
    );
  });

  it('shows a code that has no words rather than nothing', () => {
    expect(say({ code: 'ill-formed', where: 'x', reason: 'never-heard-of' })).toBe('x: never-heard-of.');
  });
});
