/** How published figures are counted: by hand for a small case. */
import { describe, expect, it } from 'vitest';
import { countPublished } from './count.ts';
import type { Suite } from './suite.ts';

function row(document: string, cases: number, more: Partial<{ outside: number; kind: Suite['kind'] }> = {}) {
  const suite = { document, kind: more.kind ?? 'published' } as Suite;
  return { suite, cases, outside: more.outside ?? 0 };
}

describe('the count of published figures', () => {
  it('leaves out libraries, what programs gave, practice and whatever lies outside its band', () => {
    const { total } = countPublished([
      row('A', 10, { outside: 3 }),
      row('B', 5, { kind: 'library' }),
      row('C', 5, { kind: 'practice' }),
      row('D', 5, { kind: 'stored' }),
    ]);
    expect(total).toBe(7);
  });

  it('holds each document to a quarter of what then remains', () => {
    // Four parts of 10 beside one of 1000: with a cap of 12 the whole is 52 and the cap a quarter of it, 13; the
    // largest part that is at most a quarter of the sum is 13 of 53.
    const { fair } = countPublished([row('big', 1000), ...['a', 'b', 'c', 'd'].map((name) => row(name, 10))]);
    expect(fair).toBe(53);
  });

  it('adds suites of one document', () => {
    expect(countPublished([row('A', 3), row('A', 4)]).byDocument).toEqual([['A', 7]]);
  });
});
