/** What a column shows beside its block: how sure it is, and the other findings of its line. */
import type { Finding } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { bracketOf, columnOf, heightOf, ticksOf } from '../../src/columns/column.ts';

function finding(verdict: Finding['verdict'], margin?: number): Finding {
  return {
    ...{ rule: `r${margin}`, line: 'gas', subject: { scope: 'job', id: '-', label: '' }, verdict },
    ...(margin === undefined ? {} : { margin }),
    ...{ source: { document: 'a rule of the test', known: 'physics' }, edition: 'any' },
    ...{ checkTheBook: false, missing: [], assumed: [], stops: false },
  };
}

const column = (...findings: readonly Finding[]) => columnOf({ line: 'gas', built: true, findings });

describe('the height of a column', () => {
  // √(min(|m|, ½)/½), worked by hand.
  it.each([
    [0.5, 1],
    [2, 1],
    [0.125, 0.5],
    [-0.125, 0.5],
    [0.1, 0.4472],
    [0, 0],
  ])('of a margin of %d is %d of a side', (margin, height) => {
    expect(heightOf(margin)).toBeCloseTo(height, 4);
  });
});

describe('the bracket of a column', () => {
  it('stands only where the ± reaches over the limit or over 10 %', () => {
    expect(bracketOf(0.3, 0.1)).toBeUndefined();
    expect(bracketOf(0.3, 0.25)?.[0]).toBeCloseTo(Math.sqrt(0.1), 9);
    expect(bracketOf(-0.2, 0.1)).toBeUndefined();
    const [low, high] = bracketOf(0.05, 0.08) ?? [];
    // From −3 % to 13 %.
    expect(low).toBeCloseTo(-Math.sqrt(0.06), 9);
    expect(high).toBeCloseTo(Math.sqrt(0.26), 9);
  });
});

describe('the ticks of a column', () => {
  it('are the other findings that are known, on the scale of the block', () => {
    const shown = column(
      finding('fails', -0.125),
      finding('unknown'),
      finding('meets', 0.5),
      finding('meets'),
      finding('does not apply'),
    );
    // A yes stands where a margin of one half does.
    expect(ticksOf(shown)).toEqual([1]);
  });

  it('say a failing yes or no at the lower end', () => {
    expect(ticksOf(column(finding('fails', -0.3), finding('fails')))).toEqual([-1]);
  });
});
