import { describe, expect, it } from 'vitest';
import { BTU, HOUR, POUND, PSI } from '../quantity/index.ts';
import { evaluate, expectOk } from '../trace/index.ts';
import { fullFirePressure, furtherValveSetting, reliefHeat, reliefSteam } from './index.ts';

describe('relief', () => {
  // 12 NYCRR 4-5.3(a): output over 1000 Btu a pound.
  it('asks for a pound of steam an hour for each 1000 Btu/h', () => {
    const steam = expectOk(evaluate(reliefSteam, { heatInput: (400_000 * BTU) / HOUR }));
    expect((steam * HOUR) / POUND).toBeCloseTo(400, 9);
    expect(expectOk(evaluate(reliefHeat, { steam }))).toBeCloseTo((400_000 * BTU) / HOUR, 6);
  });

  // 12 NYCRR 4-5.3(a), COMAR 09.12.01.13 C: 20 % up to 30 psi, 10 % above; 6 psi up to 60 psi, 10 % above.
  it.each([
    [30, 36, 36],
    [50, 55, 56],
    [60, 66, 66],
    [75, 82.5, 82.5],
  ])('of %d psi bears %d psi at full fire and a second valve at %d psi', (psi, fire, second) => {
    const x = { workingPressure: psi * PSI };
    expect(expectOk(evaluate(fullFirePressure, x)) / PSI).toBeCloseTo(fire, 9);
    expect(expectOk(evaluate(furtherValveSetting, x)) / PSI).toBeCloseTo(second, 9);
  });

  it('is not reckoned for less than nothing', () => {
    expect(evaluate(reliefSteam, { heatInput: -1 })).toMatchObject({ ok: false });
    expect(evaluate(fullFirePressure, { workingPressure: 200 * PSI })).toMatchObject({ ok: false });
  });
});
