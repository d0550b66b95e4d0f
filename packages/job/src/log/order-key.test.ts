import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isOrderKey, orderBetween, orderKeys } from './order-key.ts';

describe('an order key', () => {
  it('[L14] is found between any two others and at both ends, however often', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(1000), { maxLength: 120 }), (places) => {
        const keys: string[] = [];
        for (const place of places) {
          const at = place % (keys.length + 1);
          const key = orderBetween(keys[at - 1], keys[at]);
          expect(isOrderKey(key)).toBe(true);
          keys.splice(at, 0, key);
        }
        expect(keys).toEqual([...new Set(keys)].sort());
      }),
    );
  });

  it('[L14] stays short for a list that only grows, at either end', () => {
    let [last, first] = orderKeys(1) as [string, string];
    first = last;
    for (let i = 0; i < 5000; i++) {
      const [next, previous] = [orderBetween(last), orderBetween(undefined, first)];
      expect(next > last && previous < first).toBe(true);
      [last, first] = [next, previous];
    }
    expect(Math.max(last.length, first.length)).toBeLessThanOrEqual(4);
  });

  it('[L14] goes past the last step of either end', () => {
    let [last, first] = ['zzzx', '0002'];
    for (let i = 0; i < 200; i++) {
      const [next, previous] = [orderBetween(last), orderBetween(undefined, first)];
      expect(next > last && previous < first && isOrderKey(next) && isOrderKey(previous)).toBe(true);
      [last, first] = [next, previous];
    }
  });

  it('[L14] comes after the lower where two have the same', () => {
    expect(orderBetween('V', 'V') > 'V').toBe(true);
  });

  it('[L14] never ends in zero, or nothing would go between', () => {
    expect(['V0', '0', '', 'V-', 'é'].some(isOrderKey)).toBe(false);
  });
});
