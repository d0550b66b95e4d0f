import { describe, expect, it } from 'vitest';
import { FOOT } from '../../quantity/index.ts';
import { expectOk } from '../../trace/index.ts';
import { EXAMPLE_PAD, twoInch } from './example.ts';
import { buildPad, type HeaterBank, heaterFlows, type PadSpec, solvePad } from './index.ts';

function bankOf(count: number, arrangement: HeaterBank['arrangement']): PadSpec {
  const one = EXAMPLE_PAD.bank!.heaters[0]!;
  const heaters = Array.from({ length: count }, (_, i) => ({ ...one, id: `heater-${i + 1}` }));
  const header = Array.from({ length: count - 1 }, () => [twoInch(6, 0.4)]);
  return { ...EXAMPLE_PAD, bank: { arrangement, heaters, supplyHeader: header, returnHeader: header } };
}

function flows(spec: PadSpec): number[] {
  return expectOk(solvePad(expectOk(buildPad(spec)), { speed: 1 })).heaters.map((one) => one.flow);
}

describe('heaters side by side', () => {
  it('in a direct return get less the farther they stand', () => {
    const [first = 0, second = 0, third = 0] = flows(bankOf(3, 'direct'));
    expect(first).toBeGreaterThan(second);
    expect(second).toBeGreaterThan(third);
  });

  it('in a reverse return get the same at both ends, and less between (Siegenthaler, reverse return piping)', () => {
    const [first = 0, second = 0, third = 0] = flows(bankOf(3, 'reverse'));
    expect(third).toBeCloseTo(first, 9);
    expect(second).toBeLessThan(first);
  });

  it('stand closer together in a reverse return', () => {
    const spread = (spec: PadSpec) => Math.max(...flows(spec)) / Math.min(...flows(spec));
    expect(spread(bankOf(4, 'reverse'))).toBeLessThan(spread(bankOf(4, 'direct')));
  });

  it('are told by name against their band', () => {
    const pad = expectOk(buildPad(bankOf(3, 'direct')));
    const rows = expectOk(heaterFlows(pad, [{ speed: 1 }, { speed: 0.3 }]));
    expect(rows).toHaveLength(6);
    expect(rows.map((one) => one.heater).slice(0, 3)).toEqual(['heater-1', 'heater-2', 'heater-3']);
    expect(rows.filter((one) => one.state === 1).every((one) => one.standing === 'below')).toBe(true);
  });

  it('need their headers drawn', () => {
    const spec = bankOf(3, 'direct');
    const bank = { ...spec.bank!, supplyHeader: [[twoInch(6, 0)]] };
    const pad = buildPad({ ...spec, bank });
    expect(pad.ok ? '' : pad.issues[0]?.reason).toBe('header-sections');
  });
});

it('a heater without flow has no head between its ends', () => {
  const pad = expectOk(buildPad(EXAMPLE_PAD));
  const still = expectOk(solvePad(pad, { speed: 0 }));
  const { inletPressure = 0, outletPressure = 1 } = still.heaters[0] ?? {};
  expect(inletPressure).toBeCloseTo(outletPressure, 3);
  expect(still.heaters[0]?.flow).toBeCloseTo(0, 12);
  expect(still.pumpHead / FOOT).toBeCloseTo(0, 6);
});
