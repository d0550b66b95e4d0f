import { describe, expect, it } from 'vitest';
import { evaluate, expectOk } from '../../trace/index.ts';
import { leakArea, roomPull } from './index.ts';

const ROOM = { airChanges: 0.5, volume: 100, density: 1.2 };

describe('cracks of a room', () => {
  // By hand: 20·0.5·100/3600 = 0.2778 m3/s at 50 Pa; × 0.08^0.65 = 0.0538 at 4 Pa; over 0.61·√(8/1.2) = 1.575 m/s.
  it('pass at 4 Pa what the power law of the blower door gives there', () => {
    const area = expectOk(evaluate(leakArea, ROOM));
    expect(area).toBeCloseTo(0.0538 / 1.575, 4);
    const flow = ((20 * 0.5 * 100) / 3600) * 0.08 ** 0.65;
    expect(expectOk(evaluate(roomPull, { flow, area, density: 1.2 }))).toBeCloseTo(4, 9);
  });

  it('refuse a room without air', () => {
    expect(evaluate(leakArea, { ...ROOM, airChanges: 0 })).toMatchObject({ ok: false });
  });
});
