import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { EXAMPLE_PAD } from './example.ts';
import { gaugeLoading } from './gauge-loading.ts';
import { buildPad, solvePad } from './index.ts';

const pad = expectOk(buildPad(EXAMPLE_PAD));
const BOUNDS = { least: 0.1, most: 1e4 };

describe('loading of a gauge reading, by secants', () => {
  it('returns to the loading that gave the reading', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 1.1, noNaN: true }),
        fc.double({ min: -1, max: 2, noNaN: true }),
        (speed, exponent) => {
          const loading = 10 ** exponent;
          const pressure = expectOk(solvePad(pad, { speed, loading })).filterInletPressure;
          const found = gaugeLoading(pad, { state: { speed }, pressure, least: 0.05, most: 1e4 });
          expect(found).toBeDefined();
          expect(found! / loading).toBeCloseTo(1, 4);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('gives no answer above the shut-off pressure, outside its bounds, or while two basins are joined', () => {
    const state = { speed: 1 };
    expect(gaugeLoading(pad, { state, pressure: 1e6, ...BOUNDS })).toBeUndefined();
    expect(gaugeLoading(pad, { state, pressure: -5e4, ...BOUNDS })).toBeUndefined();
    const both = { speed: 1, from: { pool: 1, spa: 1 } };
    expect(gaugeLoading(pad, { state: both, pressure: 1.5e5, ...BOUNDS })).toBeUndefined();
  });
});
