import { describe, expect, it } from 'vitest';
import { FOOT, PSI } from '../../quantity/index.ts';
import { expectOk } from '../../trace/index.ts';
import { EXAMPLE_PAD } from './example.ts';
import { buildPad, dirtyLoading, filterVerdict, loadingOfReading, solvePad } from './index.ts';

const pad = expectOk(buildPad(EXAMPLE_PAD));
const clean = { speed: 1 };
const gauge = (speed: number, loading: number) =>
  expectOk(solvePad(pad, { speed, loading })).filterInletPressure;

describe('filter loading', () => {
  it('shows the rise allowed at the speed of the clean figure', () => {
    for (const psi of [2, 5, 8, 10]) {
      const loading = expectOk(dirtyLoading(pad, { clean, measure: 'rise-over-clean', pressure: psi * PSI }));
      expect((gauge(1, loading) - gauge(1, 1)) / PSI).toBeCloseTo(psi, 5);
    }
  });

  it('takes a loss from inlet to outlet as such', () => {
    const loading = expectOk(dirtyLoading(pad, { clean, measure: 'inlet-to-outlet', pressure: 10 * PSI }));
    const solution = expectOk(solvePad(pad, { speed: 1, loading }));
    expect((solution.filterInletPressure - solution.filterOutletPressure) / PSI).toBeCloseTo(10, 5);
  });

  it('sees through a slow pump: the rise there is about its speed squared (readings of the trade)', () => {
    const loading = expectOk(dirtyLoading(pad, { clean, measure: 'rise-over-clean', pressure: 8 * PSI }));
    const slow = gauge(0.5, loading) - gauge(0.5, 1);
    expect(Math.abs(slow / (8 * PSI * 0.25) - 1)).toBeLessThan(0.1);
    const verdict = expectOk(
      filterVerdict(pad, { state: { speed: 0.5 }, pressure: gauge(0.5, loading) }, clean),
    );
    expect(verdict.rise / PSI).toBeCloseTo(8, 4);
    expect(verdict.loading).toBeCloseTo(loading, 4);
  });

  it('returns from a gauge reading to the loading at every speed', () => {
    for (const speed of [0.4, 0.7, 1]) {
      for (const loading of [0.5, 1, 2.5, 20]) {
        const state = { speed, loading: 99 };
        const found = expectOk(loadingOfReading(pad, { state, pressure: gauge(speed, loading) }));
        expect(found / loading).toBeCloseTo(1, 5);
      }
    }
  });

  it('says when no dirt explains the gauge, and when the pump cannot make the rise', () => {
    const never = dirtyLoading(pad, {
      clean: { speed: 0.3 },
      measure: 'rise-over-clean',
      pressure: 10 * PSI,
    });
    expect(never.ok ? '' : never.issues[0]?.reason).toBe('pump-cannot-make-rise');
    const over = loadingOfReading(pad, { state: clean, pressure: 60 * PSI });
    expect(over.ok ? '' : over.issues[0]?.reason).toBe('pump-cannot-make-rise');
    const under = loadingOfReading(pad, { state: clean, pressure: -2 * FOOT });
    expect(under.ok ? '' : under.issues[0]?.reason).toBe('cleaner-than-clean');
  });
});
