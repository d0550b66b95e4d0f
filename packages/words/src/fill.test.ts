import { describe, expect, it } from 'vitest';
import { fill, slotsOf } from './fill.ts';

describe('fill', () => {
  it('puts each value into its slot, wherever and however often it stands', () => {
    expect(fill('at least {required}, found {found}', { required: '4.5 in w.c.', found: 5 })).toBe(
      'at least 4.5 in w.c., found 5',
    );
    expect(fill('{a} and {a}', { a: 'x' })).toBe('x and x');
  });

  it('leaves a slot without a value to be seen', () => {
    expect(fill('Head lost in {part}')).toBe('Head lost in {part}');
  });

  it('takes no value from what every object has', () => {
    expect(fill('{constructor}', {})).toBe('{constructor}');
  });

  it('names the slots of a sentence', () => {
    expect(slotsOf('Pressure at {node}, at the far end of {link}')).toEqual(['node', 'link']);
    expect(slotsOf('nothing to fill')).toEqual([]);
  });
});
