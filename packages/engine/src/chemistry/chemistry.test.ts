import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, expectOk, Recorder } from '../trace/index.ts';
import {
  calciteSolubility,
  carbonateAlkalinity,
  INDEX_VARIANTS,
  type PoolWater,
  saturationIndex,
  secondDissociation,
  solidsConstant,
} from './index.ts';

const kelvin = (fahrenheit: number): number => (fahrenheit + 459.67) / 1.8;

/** In the units of a test kit. */
function water(
  ph: number,
  fahrenheit: number,
  [calcium, alkalinity, solids, acid]: readonly number[],
): PoolWater {
  return {
    ph,
    temperature: kelvin(fahrenheit),
    calcium: (calcium ?? 0) / 1000,
    totalAlkalinity: (alkalinity ?? 0) / 1000,
    dissolvedSolids: (solids ?? 0) / 1000,
    cyanuricAcid: (acid ?? 0) / 1000,
  };
}

describe('saturation index by the table', () => {
  // 10 NYCRR 6-1.30, the rule's own example: TF 0.52, CF 1.76, AF 1.22, sum −0.80.
  it('meets the example of the rule, whose factors are rounded to 0.01', () => {
    const index = expectOk(saturationIndex('table', water(7.8, 68, [140, 20, 1000])));
    expect(Math.abs(index + 0.8)).toBeLessThan(0.01);
  });

  // Administrative Rules of Montana 37.115.1308, Table 6: 12.1 below 1000 ppm, 12.2 above.
  it('takes its constant by the dissolved solids', () => {
    expect([0, 1, 1.5, 3].map(solidsConstant)).toEqual([12.1, 12.1, 12.2, 12.3]);
  });

  it('shows its factors', () => {
    const recorder = new Recorder();
    saturationIndex('table', water(7.8, 68, [140, 20, 1000]), recorder);
    const index = recorder.steps.find((step) => step.id === 'chemistry.table-index');
    const factors =
      index?.step === 'formula' ? index.children.map((child) => child.step === 'given' && child.value) : [];
    expect(factors.map((value) => Number(value).toFixed(3))).toEqual(['0.520', '1.760', '1.225', '12.100']);
  });
});

describe('saturation index from constants', () => {
  // Plummer and Busenberg (1982): 10.329 and 8.480 at 25 °C, from memory.
  it('has the published constants at 25 °C', () => {
    expect(secondDissociation(298.15)).toBeCloseTo(10.329, 3);
    expect(calciteSolubility(298.15)).toBeCloseTo(8.48, 3);
  });

  // The sources are known to differ by about 0.15 on these waters.
  it.each(['standard-methods', 'carrier'] as const)(
    '%s lies near the table on the worked examples',
    (variant) => {
      for (const sample of [
        water(7.8, 68, [140, 20, 1000]),
        water(7, 76, [200, 50, 1000]),
        water(7.6, 84, [300, 75, 1000]),
      ]) {
        const table = expectOk(saturationIndex('table', sample));
        expect(Math.abs(expectOk(saturationIndex(variant, sample)) - table)).toBeLessThan(0.17);
      }
    },
  );
});

describe('cyanuric acid', () => {
  // Service Industry News, 14 September 2021: 100 − 0.33 × 90.
  it('takes a third of itself off the alkalinity near pH 7.5', () => {
    const x = { ph: 7.6, totalAlkalinity: 0.1, cyanuricAcid: 0.09 };
    expect(expectOk(evaluate(carbonateAlkalinity, x)) * 1000).toBeCloseTo(100 - 0.33 * 90, 0);
  });

  it('that counts for all of the alkalinity is a contradiction', () => {
    expect(saturationIndex('table', water(7.6, 84, [300, 60, 1000, 200]))).toMatchObject({
      ok: false,
      issues: [{ code: 'contradiction', reason: 'cyanurate-above-alkalinity' }],
    });
  });
});

describe('every variant', () => {
  const sample = fc.record({
    ph: fc.double({ min: 6.5, max: 8.4, noNaN: true }),
    temperature: fc.double({ min: 275, max: 315, noNaN: true }),
    calcium: fc.double({ min: 0.02, max: 0.9, noNaN: true }),
    totalAlkalinity: fc.double({ min: 0.02, max: 0.4, noNaN: true }),
    dissolvedSolids: fc.double({ min: 0.1, max: 5, noNaN: true }),
    cyanuricAcid: fc.constant(0),
  });

  it.each(INDEX_VARIANTS)('%s rises with pH, warmth, calcium and alkalinity', (variant) => {
    fc.assert(
      fc.property(sample, (x) => {
        const at = (more: Partial<PoolWater>): number =>
          expectOk(saturationIndex(variant, { ...x, ...more }));
        const own = at({});
        expect(at({ ph: x.ph + 0.5 })).toBeCloseTo(own + 0.5, 9);
        expect(at({ temperature: x.temperature + 5 })).toBeGreaterThan(own);
        expect(at({ calcium: x.calcium * 1.1 })).toBeGreaterThan(own);
        expect(at({ totalAlkalinity: x.totalAlkalinity * 1.1 })).toBeGreaterThan(own);
      }),
    );
  });

  it.each(INDEX_VARIANTS)('%s refuses what lies outside its range', (variant) => {
    const good = water(7.5, 84, [300, 90, 1000]);
    for (const bad of [{ ph: 11 }, { calcium: 3 }, { temperature: 200 }, { totalAlkalinity: -0.1 }])
      expect(saturationIndex(variant, { ...good, ...bad })).toMatchObject({ ok: false });
  });
});
