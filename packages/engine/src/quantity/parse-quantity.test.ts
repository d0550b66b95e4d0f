import { describe, expect, it } from 'vitest';
import { parseQuantity } from './parse-quantity.ts';

describe('parseQuantity', () => {
  it('reads a fraction of an inch by the inch of NIST SP 811', () => {
    const read = parseQuantity('1-1/2"', 'diameter');
    expect(read.ok && read.value.si).toBeCloseTo(0.0381, 12);
  });
});
