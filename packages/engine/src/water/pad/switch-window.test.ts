import { describe, expect, it } from 'vitest';
import { FOOT, PSI, STANDARD_GRAVITY } from '../../quantity/index.ts';
import { expectOk } from '../../trace/index.ts';
import { EXAMPLE_PAD } from './example.ts';
import { buildPad, flowWhenOpens, type PadState, pressureAtRest, solvePad, switchWindow } from './index.ts';

const bank = EXAMPLE_PAD.bank!;
const sensor = { heater: 0, differential: 0.5 * PSI, margin: 0.25 * PSI };
const HEATING: readonly PadState[] = [{ speed: 1 }, { speed: 0.6 }, { speed: 0.6, loading: 5 }];

/** The pad with its heater at another height over the pool, ft. */
function padAt(feet: number) {
  const heaters = bank.heaters.map((one) => ({ ...one, elevation: feet * FOOT }));
  return expectOk(buildPad({ ...EXAMPLE_PAD, bank: { ...bank, heaters } }));
}

describe('window of the water-pressure switch', () => {
  it('lies between the water at rest and the slowest, dirtiest run', () => {
    const pad = padAt(-3);
    const found = expectOk(switchWindow(pad, HEATING, sensor));
    const { density } = pad.water;
    expect(found.rest).toBeCloseTo(density * STANDARD_GRAVITY * 3 * FOOT, 6);
    expect(found.low).toBeCloseTo(found.rest + 0.75 * PSI, 6);
    const slowest = expectOk(solvePad(pad, { speed: 0.6, loading: 5 }));
    expect(found.high).toBeCloseTo((slowest.heaters[0]?.inletPressure ?? 0) - 0.25 * PSI, 6);
    expect(found.runningState).toBe(2);
    expect(found.verdict).toBe('window');
  });

  it('moves by 0.43 psi with each foot the heater stands lower (common practice, no source)', () => {
    const low = expectOk(switchWindow(padAt(-4), HEATING, sensor));
    const high = expectOk(switchWindow(padAt(-3), HEATING, sensor));
    expect((low.low - high.low) / PSI).toBeCloseTo(0.43, 2);
    expect((low.high - high.high) / PSI).toBeCloseTo(0.43, 2);
  });

  it('counts the atmosphere, not a vacuum, when the heater stands above the water', () => {
    for (const feet of [1, 4, 8]) expect(expectOk(switchWindow(padAt(feet), HEATING, sensor)).rest).toBe(0);
  });

  it('closes as the heater rises, and then only a flow switch serves', () => {
    const verdicts = [0, 4, 8, 12].map(
      (feet) => expectOk(switchWindow(padAt(feet), HEATING, sensor)).verdict,
    );
    expect(verdicts[0]).toBe('window');
    expect(verdicts[3]).toBe('flow-switch');
    const slow = expectOk(switchWindow(padAt(-8), [{ speed: 0.15 }], sensor));
    expect(slow.verdict).toBe('flow-switch');
    expect(slow.low).toBeGreaterThan(slow.high);
  });

  it('says when the switch cannot be turned to where it should stand', () => {
    const pad = padAt(-12);
    const range = [1 * PSI, 4 * PSI] as const;
    expect(expectOk(switchWindow(pad, [{ speed: 1 }], { ...sensor, range })).verdict).toBe('out-of-range');
  });

  it('takes the highest basin whose way is open', () => {
    const heater = { ...bank.heaters[0]!, elevation: 0 };
    const spa = pressureAtRest(EXAMPLE_PAD, heater, { speed: 1, from: { pool: 1 }, to: { spa: 1 } });
    expect(spa / PSI).toBeCloseTo(1.5 * 0.433, 2);
    expect(pressureAtRest(EXAMPLE_PAD, heater, { speed: 1 })).toBe(0);
  });

  it('refuses a heater that is not there and a negative differential', () => {
    expect(switchWindow(padAt(0), HEATING, { ...sensor, heater: 3 }).ok).toBe(false);
    expect(switchWindow(padAt(0), HEATING, { ...sensor, differential: -1 }).ok).toBe(false);
    expect(switchWindow(padAt(0), [], sensor).ok).toBe(false);
  });
});

describe('flow when the switch opens', () => {
  it('is where the pressure falls to the setting less its differential, and rises with the setting', () => {
    const pad = padAt(-2);
    let before = 0;
    for (const psi of [2, 3, 4]) {
      const found = expectOk(flowWhenOpens(pad, { speed: 1 }, sensor, psi * PSI));
      const there = expectOk(solvePad(pad, { speed: found.speed }));
      expect((there.heaters[0]?.inletPressure ?? 0) / PSI).toBeCloseTo(psi - 0.5, 3);
      expect(found.flow).toBeGreaterThan(before);
      before = found.flow;
    }
  });

  it('never comes when the water at rest holds the switch, and says so', () => {
    const stuck = flowWhenOpens(padAt(-10), { speed: 1 }, sensor, 2 * PSI);
    expect(stuck.ok ? '' : stuck.issues[0]?.reason).toBe('never-opens');
    const off = flowWhenOpens(padAt(0), { speed: 0.5 }, sensor, 30 * PSI);
    expect(off.ok ? '' : off.issues[0]?.reason).toBe('not-made');
  });
});
