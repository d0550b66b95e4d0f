import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, expectOk } from '../trace/index.ts';
import {
  bs845Loss,
  COMBUSTION_FUELS,
  coAirFree,
  combustionFuel,
  enthalpyRise,
  excessAirOf,
  flameBalance,
  flueCarbonDioxide,
  flueGas,
  flueOxygen,
  siegertLoss,
} from './index.ts';

const kelvin = (fahrenheit: number): number => (fahrenheit + 459.67) / 1.8;
const SEA_LEVEL = 101_325;
const { natural, propane } = COMBUSTION_FUELS;
const excess = fc.double({ min: 0, max: 5, noNaN: true });

describe('the gases of a flue', () => {
  // JANAF thermochemical tables, h(500 K) − h(298.15 K) and h(1000 K) − h(298.15 K), kJ/mol, from memory.
  it.each([
    ['nitrogen', 5.911, 21.463],
    ['oxygen', 6.084, 22.703],
    ['carbon-dioxide', 8.305, 33.397],
    ['water', 6.925, 26.0],
  ] as const)('%s warms as its table says', (gas, to500, to1000) => {
    expect(Math.abs(enthalpyRise(gas, 298.15, 500) / 1000 / to500 - 1)).toBeLessThan(0.002);
    expect(Math.abs(enthalpyRise(gas, 298.15, 1000) / 1000 / to1000 - 1)).toBeLessThan(0.002);
  });
});

describe('excess air', () => {
  it('comes back from the oxygen and from the carbon dioxide it makes', () => {
    fc.assert(
      fc.property(excess, fc.constantFrom(natural, propane), (excessAir, fuel) => {
        const { airDemand, dryFlue, carbon } = flameBalance(fuel);
        const oxygen = expectOk(evaluate(flueOxygen, { airDemand, dryFlue, excessAir }));
        const carbonDioxide = expectOk(
          evaluate(flueCarbonDioxide, { airDemand, dryFlue, carbon, excessAir }),
        );
        expect(expectOk(excessAirOf(fuel, { oxygen }))).toBeCloseTo(excessAir, 9);
        expect(expectOk(excessAirOf(fuel, { carbonDioxide }))).toBeCloseTo(excessAir, 9);
      }),
    );
  });

  it('is refused where there is more carbon dioxide than the fuel can give', () => {
    expect(excessAirOf(natural, { carbonDioxide: 0.13 })).toMatchObject({
      ok: false,
      issues: [{ code: 'contradiction', reason: 'rich-flame' }],
    });
    expect(excessAirOf(natural, { carbonDioxide: 0.1172 })).toEqual({ ok: true, value: expect.any(Number) });
  });

  it('of a composition is that of its parts', () => {
    expect(expectOk(combustionFuel({ methane: 1 }))).toEqual(natural);
    expect(combustionFuel({ nitrogen: 1 })).toMatchObject({ issues: [{ reason: 'nothing-burns' }] });
    expect(combustionFuel({ methane: -1 })).toMatchObject({ issues: [{ reason: 'fraction-outside-0-1' }] });
  });
});

describe('carbon monoxide, air-free', () => {
  // Half of the sample is air: twice the reading. From the balance of dilution.
  it('doubles where half of the sample is air', () => {
    expect(expectOk(evaluate(coAirFree, { carbonMonoxide: 100e-6, oxygen: 0.1045 }))).toBeCloseTo(200e-6, 12);
  });
});

describe('efficiency', () => {
  const at = (stack: number, more: { fuel?: typeof natural; oxygen?: number; air?: number } = {}) =>
    flueGas(
      more.fuel ?? natural,
      { oxygen: more.oxygen ?? 0.03 },
      { stackTemperature: stack, airTemperature: more.air ?? kelvin(70), airPressure: SEA_LEVEL },
    );

  // US DOE Steam Tip Sheet 4: 80.4 % at 3 % oxygen and 400 °F; the balance lies 0.3 to 0.7 points above that table.
  it('stands near the published table', () => {
    expect(Math.abs(expectOk(at(kelvin(470))).grossEfficiency - 0.804)).toBeLessThan(0.005);
  });

  it('of a flue as cold as its air is the whole gross heat but for the vapour that air can hold', () => {
    const cold = expectOk(at(kelvin(70)));
    expect(cold.grossEfficiency).toBeGreaterThan(0.98);
    expect(cold.netEfficiency).toBeGreaterThan(1);
  });

  it('falls with a hotter stack and with more air, and never jumps at the dew point', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.005, max: 0.15, noNaN: true }),
        fc.double({ min: 296, max: 800, noNaN: true }),
        fc.constantFrom(natural, propane),
        (oxygen, stack, fuel) => {
          const own = expectOk(at(stack, { oxygen, fuel })).grossEfficiency;
          const hotter = expectOk(at(stack + 0.1, { oxygen, fuel })).grossEfficiency;
          expect(hotter).toBeLessThan(own);
          expect(own - hotter).toBeLessThan(0.002);
          expect(expectOk(at(stack, { oxygen: oxygen + 0.01, fuel })).grossEfficiency).toBeLessThan(own);
        },
      ),
    );
  });

  it('of a stack colder than its air, or hotter than any, is none', () => {
    expect(at(280)).toMatchObject({ ok: false, issues: [{ code: 'no-solution' }] });
    expect(at(1200)).toMatchObject({ ok: false, issues: [{ code: 'out-of-range' }] });
  });

  it('has a lower dew point higher up', () => {
    const high = flueGas(
      natural,
      { oxygen: 0.03 },
      {
        stackTemperature: 450,
        airTemperature: 290,
        airPressure: 80_000,
      },
    );
    expect(expectOk(high).dewPoint).toBeLessThan(expectOk(at(450)).dewPoint);
  });
});

describe('the short forms', () => {
  const x = { oxygen: 0.03, rise: 400 / 1.8 };

  it('give what their equations give by hand', () => {
    // K1·ΔT/CO2 = 0.3458·222.2/10.046 = 7.65; K3·1.2222 = 11.98.
    expect(expectOk(evaluate(bs845Loss, x))).toBeCloseTo(0.1963, 3);
    // 222.2·(0.66/18 + 0.009) = 10.15.
    expect(expectOk(evaluate(siegertLoss, { ...x, a2: 0.66, b: 0.009 }))).toBeCloseTo(0.1015, 4);
  });
});
