import { describe, expect, it } from 'vitest';
import { FOOT, HOUR, MINUTE, PSI, US_GALLON } from '../../quantity/index.ts';
import { evaluate, expectOk } from '../../trace/index.ts';
import {
  criticalClosure,
  flowForTurnover,
  staticHeight,
  staticPressure,
  surgeHead,
  turnover,
  WATER_BULK_MODULUS,
  waveSpeed,
} from './index.ts';

const GPM = US_GALLON / MINUTE;

describe('turnover', () => {
  it('asks 55.56 gpm to turn 20,000 gal over in 6 h, and returns', () => {
    const volume = 20_000 * US_GALLON;
    const flow = expectOk(evaluate(flowForTurnover, { volume, time: 6 * HOUR }));
    expect(flow / GPM).toBeCloseTo(55.556, 3);
    expect(expectOk(evaluate(turnover, { volume, flow })) / HOUR).toBeCloseTo(6, 12);
  });

  it('refuses no flow', () => {
    expect(evaluate(turnover, { volume: 50, flow: 0 }).ok).toBe(false);
  });
});

describe('static head', () => {
  it('is 0.433 psi a foot at 60 °F, either way (common practice, no source)', () => {
    const up = expectOk(evaluate(staticPressure, { height: 1 * FOOT, density: 999.016 }));
    expect(up / PSI).toBeCloseTo(0.433, 3);
    expect(staticPressure.kernel({ height: -FOOT, density: 999.016 })).toBe(-up);
    expect(staticHeight.kernel({ pressure: up, density: 999.016 })).toBeCloseTo(FOOT, 12);
  });
});

describe('surge', () => {
  it('runs at the speed of sound in water where the wall is rigid, and slower in plastic', () => {
    const pipe = { insideDiameter: 0.0525, wall: 0.0039, density: 998.2 };
    const rigid = expectOk(evaluate(waveSpeed, { ...pipe, modulus: 1e15 }));
    expect(rigid).toBeCloseTo(Math.sqrt(WATER_BULK_MODULUS / 998.2), 1);
    expect(Math.abs(rigid / 1481 - 1)).toBeLessThan(0.005);
    const plastic = waveSpeed.kernel({ ...pipe, modulus: 2.8e9 });
    expect(plastic).toBeLessThan(500);
    expect(surgeHead.kernel({ waveSpeed: plastic, velocityChange: 2 })).toBeGreaterThan(60);
    expect(criticalClosure.kernel({ length: 30, waveSpeed: plastic })).toBeLessThan(0.2);
  });
});
