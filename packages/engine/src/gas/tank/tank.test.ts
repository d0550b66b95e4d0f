import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BTU, HOUR, INCH, PSI } from '../../quantity/index.ts';
import { evaluate, expectOk } from '../../trace/index.ts';
import { tankUnderDraw } from './tank-state.ts';
import { fillFactor, tankVaporisation } from './trade-rule.ts';
import { propaneSaturationTemperature, propaneVapourPressure } from './vapour-pressure.ts';
import {
  liquidUnderDraw,
  SHELL_TRANSMITTANCE,
  segmentAngle,
  wettedArea,
  wettedShellVaporisation,
} from './wetted-shell.ts';

const fahrenheit = (f: number): number => (f + 459.67) / 1.8;
const BTUH = BTU / HOUR;
const shell = { diameter: 37 * INCH, length: 120 * INCH };

describe('propane vapour pressure', () => {
  it('boils at 231.036 K under one atmosphere (normal boiling point, Lemmon et al. 2009, from memory)', () => {
    expect(propaneVapourPressure.kernel({ temperature: 231.036 }) / 101_325).toBeCloseTo(1, 4);
  });

  it('returns from pressure to temperature', () => {
    fc.assert(
      fc.property(fc.double({ min: 195, max: 360, noNaN: true }), (temperature) => {
        const pressure = propaneVapourPressure.kernel({ temperature });
        expect(propaneSaturationTemperature.kernel({ pressure })).toBeCloseTo(temperature, 8);
      }),
    );
  });

  it('stops before the critical point', () => {
    expect(evaluate(propaneVapourPressure, { temperature: 375 }).ok).toBe(false);
  });
});

describe('trade rule', () => {
  const at = (fill: number, f: number) =>
    evaluate(tankVaporisation, { ...shell, fill, airTemperature: fahrenheit(f) });

  it('gives D·L·K at 0 °F, and its factors of temperature (from memory)', () => {
    expect(expectOk(at(0.4, 0)) / BTUH).toBeCloseTo(37 * 120 * 80, 0);
    const factors = [-15, -10, -5, 5, 10, 15, 20].map((f) => expectOk(at(0.4, f)) / expectOk(at(0.4, 0)));
    [0.25, 0.5, 0.75, 1.25, 1.5, 1.75, 2].forEach((factor, i) => {
      expect(factors[i]).toBeCloseTo(factor, 9);
    });
  });

  it('goes with the wetted part of the shell, within 4.5 %', () => {
    for (const fill of [0.1, 0.2, 0.3, 0.4, 0.5, 0.7, 0.8]) {
      const geometry = (100 * segmentAngle(fill)) / segmentAngle(0.6);
      expect(Math.abs(fillFactor(fill) / geometry - 1)).toBeLessThan(0.045);
    }
  });

  it('is refused where it has nothing to say', () => {
    for (const [fill, f] of [
      [0.05, 0],
      [0.9, 0],
      [0.5, -25],
      [0.5, 60],
    ] as const)
      expect(at(fill, f).ok).toBe(false);
  });
});

describe('wetted shell', () => {
  it('wets half of the shell and the ends when half full', () => {
    const half = wettedArea.kernel({ ...shell, fill: 0.5 });
    const whole = Math.PI * shell.diameter * shell.length + (Math.PI / 2) * shell.diameter ** 2;
    expect(half / whole).toBeCloseTo(0.5, 10);
  });

  it('stands on the same order as the trade rule at 0 °F, whose zero is −20 °F', () => {
    const heat = { transmittance: SHELL_TRANSMITTANCE, airTemperature: fahrenheit(0) };
    const to = (f: number): number =>
      wettedShellVaporisation.kernel({ ...shell, fill: 0.6, ...heat, liquidTemperature: fahrenheit(f) }) /
      BTUH;
    // The rule stands between a liquid that may cool to −20 °F and one that may cool to its boiling point.
    expect(to(-20)).toBeLessThan(37 * 120 * 100);
    expect(to(-44)).toBeGreaterThan(37 * 120 * 100);
  });

  it('cools the liquid to where it takes in what the draw carries off', () => {
    const area = wettedArea.kernel({ ...shell, fill: 0.5 });
    const heat = { transmittance: SHELL_TRANSMITTANCE, airTemperature: fahrenheit(10) };
    const heatInput = wettedShellVaporisation.kernel({
      ...shell,
      fill: 0.5,
      ...heat,
      liquidTemperature: fahrenheit(-30),
    });
    const settled = liquidUnderDraw.kernel({ area, ...heat, heatInput });
    expect(settled).toBeCloseTo(fahrenheit(-30), 9);
  });

  it('supplies nothing to air as cold as the liquid may be', () => {
    const x = { ...shell, fill: 0.5, transmittance: 10, airTemperature: 240, liquidTemperature: 240 };
    const none = evaluate(wettedShellVaporisation, x);
    expect(none.ok ? '' : none.issues[0]?.code).toBe('no-solution');
  });
});

describe('tankUnderDraw', () => {
  const tank = {
    ...shell,
    fill: 0.5,
    airTemperature: fahrenheit(0),
    atmosphere: 101_325,
    leastPressure: 10 * PSI,
  };

  it('stands at the vapour pressure of the air temperature when nothing is drawn', () => {
    const state = expectOk(tankUnderDraw({ ...tank, heatInput: 0 }));
    expect(state.liquidTemperature).toBeCloseTo(fahrenheit(0), 9);
    // 24.5 psi on a trade chart for pure propane, ± 1 psi.
    expect(Math.abs(state.pressure / PSI - 24.5)).toBeLessThan(1);
  });

  it('says when the pressure left is too low for the regulator, however far', () => {
    const issue = (kbtu: number) => {
      const state = tankUnderDraw({ ...tank, heatInput: kbtu * 1000 * BTUH });
      return state.ok ? undefined : state.issues[0];
    };
    expect(issue(100)).toBeUndefined();
    expect(issue(400)).toMatchObject({ reason: 'tank-pressure-too-low', min: 10 * PSI });
    expect(issue(5000)).toMatchObject({ reason: 'tank-pressure-too-low' });
  });
});
