import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BTU, FAHRENHEIT_STEP, HOUR, MINUTE, US_GALLON, ZERO_CELSIUS } from '../../quantity/index.ts';
import { evaluate, expectOk } from '../../trace/index.ts';
import { exchangerInlet, flowForRise, heatCarried, recirculationFor, temperatureRise } from './index.ts';

const GPM = US_GALLON / MINUTE;
const water = { density: 996.6, specificHeat: 4181 };

describe('temperature rise', () => {
  it('is Btu/h over 500 gpm, to half a per cent (ACHR News)', () => {
    const heat = (80_000 * BTU) / HOUR;
    const rise = expectOk(evaluate(temperatureRise, { heat, flow: 8 * GPM, ...water }));
    expect(Math.abs(rise / FAHRENHEIT_STEP / 20 - 1)).toBeLessThan(0.005);
  });

  it('closes: heat, rise and flow return', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e3, max: 1e6, noNaN: true }),
        fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
        (heat, flow) => {
          const rise = temperatureRise.kernel({ heat, flow, ...water });
          expect(heatCarried.kernel({ rise, flow, ...water }) / heat).toBeCloseTo(1, 12);
          expect(flowForRise.kernel({ heat, rise, ...water }) / flow).toBeCloseTo(1, 12);
        },
      ),
    );
  });

  it('refuses no flow: a heater without flow has no rise, it boils', () => {
    expect(evaluate(temperatureRise, { heat: 1e5, flow: 0, ...water }).ok).toBe(false);
  });
});

describe('exchanger inlet', () => {
  const waterTemperature = ZERO_CELSIUS + 27;

  it('conserves energy where the streams meet', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (recirculation, rise) => {
          const inlet = exchangerInlet.kernel({ waterTemperature, rise, recirculation });
          const mixed = waterTemperature + recirculation * (waterTemperature + rise);
          expect((1 + recirculation) * inlet).toBeCloseTo(mixed, 8);
        },
      ),
    );
  });

  it('finds the share that lifts the inlet to a limit, none when warm enough, no solution beyond the outlet', () => {
    const leastInlet = waterTemperature + 6;
    const recirculation = expectOk(evaluate(recirculationFor, { waterTemperature, rise: 10, leastInlet }));
    expect(exchangerInlet.kernel({ waterTemperature, rise: 10, recirculation })).toBeCloseTo(leastInlet, 9);
    expect(expectOk(evaluate(recirculationFor, { waterTemperature, rise: 10, leastInlet: 290 }))).toBe(0);
    const never = evaluate(recirculationFor, { waterTemperature, rise: 5, leastInlet });
    expect(never.ok ? '' : never.issues[0]?.code).toBe('no-solution');
  });
});
