/** A heater fired alone, on figures worked by hand. */
import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { figureOf, findingOf, type Survey, studyOf, withFields } from '../water/example-loop.ts';

const { BTU, HOUR } = quantity;
const kBtu = (watts: number): number => (watts * HOUR) / BTU / 1000;

const FIRED: Survey = {
  job: { stage: 'start-up' },
  site: { country: 'US', altitude: 'drawing 0 ft' },
  heaters: [
    {
      id: 'h1',
      planned: 'yes',
      fuel: 'natural',
      input: 'nameplate 250 kBtu/h',
      efficiency: 'nameplate 80 %',
    },
  ],
  gasSupply: { fuel: 'told natural', heatingValue: 'told 1,000 Btu/ft3' },
  firingTests: [
    {
      id: 'g1',
      heater: 'h1',
      dial: 'nameplate 2 ft3',
      turns: 'measured 1',
      seconds: 'measured 28.8 s',
      meterPressure: 'measured 0 psi',
      meterTemperature: 'measured 60 °F',
      waterFlow: 'measured 40 gpm',
      waterIn: 'measured 80 °F',
      waterOut: 'measured 90 °F',
    },
  ],
};
const test = (fields: Readonly<Record<string, unknown>>): Survey =>
  withFields(FIRED, 'firingTests/g1', fields);

describe('a heater fired alone', () => {
  // 2 ft3 in 28.8 s are 250 ft3 an hour; at 14.696 psia a shade under standard feet of 14.73.
  it('burns what the meter counts', () => {
    expect(kBtu(figureOf(FIRED, 'gas.clocked-input', 'h1'))).toBeCloseTo((250 * 14.696) / 14.73, 1);
    const fast = findingOf(studyOf(test({ seconds: 'measured 26 s' })), 'gas.clocked-input');
    expect(fast.verdict).toBe('fails');
  });

  it('by a compensated index needs no temperature of the gas', () => {
    const bare = test({ meterTemperature: undefined });
    expect(findingOf(studyOf(bare), 'gas.clocked-input').missing).toContain(
      'firingTests/g1/meterTemperature',
    );
    const compensated = { ...bare, gasSupply: { ...FIRED['gasSupply'], meterCompensated: 'nameplate yes' } };
    expect(kBtu(figureOf(compensated as Survey, 'gas.clocked-input', 'h1'))).toBeCloseTo(250, 1);
  });

  // The trade's 500·gpm·°F is 498 at pool temperature: 40 gpm by 10 °F are 199 kBtu/h of the 200 expected.
  it('leaves in the water what the flame should give, or is told what is missing', () => {
    expect(kBtu(figureOf(FIRED, 'heat.found-in-water', 'h1'))).toBeCloseTo(199, 0);
    const cold = findingOf(studyOf(test({ waterOut: 'measured 88 °F' })), 'heat.found-in-water');
    expect(cold).toMatchObject({ verdict: 'fails', outcome: { because: { reason: 'heat-missing' } } });
  });

  it('is asked of no heater that is not lit yet, nor the meter of a propane tank', () => {
    const planned = { ...FIRED, job: { stage: 'plan' }, firingTests: [] };
    expect(findingOf(studyOf(planned), 'gas.clocked-input').verdict).toBe('does not apply');
    const propane = withFields(test({ dial: undefined }), 'heaters/h1', { fuel: 'propane' });
    expect(findingOf(studyOf(propane), 'gas.clocked-input').verdict).toBe('does not apply');
  });
});
