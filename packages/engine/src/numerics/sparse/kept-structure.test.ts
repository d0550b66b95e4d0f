import { describe, expect, it } from 'vitest';
import { keptStructure } from './kept-structure.ts';
import { symmetricStructure } from './structure.ts';

const RING = [0, 1, 1, 2, 2, 3, 3, 0];

describe('a kept structure', () => {
  it('is the very one for the same pattern, and another for another', () => {
    const first = keptStructure(4, RING);
    expect(keptStructure(4, [...RING])).toBe(first);
    expect(keptStructure(4, RING.slice(0, 6))).not.toBe(first);
    expect(keptStructure(5, RING)).not.toBe(first);
  });

  it('is what would be found afresh, after any number of others', () => {
    for (let size = 4; size < 120; size += 1) keptStructure(size, RING);
    expect(keptStructure(4, RING)).toEqual(
      symmetricStructure(4, [
        [0, 1],
        [1, 2],
        [2, 3],
        [3, 0],
      ]),
    );
  });
});
