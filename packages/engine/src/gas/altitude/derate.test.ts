import fc from 'fast-check';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { BTU, FOOT, HOUR } from '../../quantity/index.ts';
import { expectOk } from '../../trace/index.ts';
import {
  CANADA_DERATE,
  type InputAtAltitude,
  inputAtAltitude,
  type SeaLevelInput,
  US_DERATE,
} from './derate.ts';

const KBTU = (1000 * BTU) / HOUR;
const rated: SeaLevelInput = { basis: 'sea-level', heatInput: 400 * KBTU };
const us = (feet: number): InputAtAltitude =>
  expectOk(inputAtAltitude(rated, { altitude: feet * FOOT, rule: US_DERATE }));

describe('inputAtAltitude', () => {
  it('follows NFPA 54: nothing to 2000 ft, then 4 % per 1000 ft counted from sea level', () => {
    expect(us(2000)).toMatchObject({ by: 'not-needed', heatInput: rated.heatInput });
    expect(us(5000).heatInput / KBTU).toBeCloseTo(320, 9);
    expect(us(2001).heatInput / rated.heatInput).toBeCloseTo(0.92, 4);
    expect(us(5000).by).toBe('code-default');
  });

  it('follows Canada (from memory): 10 % above 2000 to 4500 ft, and no default beyond', () => {
    const at = (feet: number) => inputAtAltitude(rated, { altitude: feet * FOOT, rule: CANADA_DERATE });
    expect(expectOk(at(1500)).heatInput).toBe(rated.heatInput);
    expect(expectOk(at(3000)).heatInput / KBTU).toBeCloseTo(360, 9);
    const beyond = at(5000);
    expect(beyond.ok ? '' : beyond.issues[0]?.reason).toBe('beyond-derate-zone');
  });

  it('lets the nameplate speak first', () => {
    const nameplate = [{ from: 2000 * FOOT, to: 7700 * FOOT, heatInput: 350 * KBTU }];
    const found = expectOk(inputAtAltitude(rated, { altitude: 5000 * FOOT, rule: US_DERATE, nameplate }));
    expect(found).toMatchObject({ by: 'nameplate', heatInput: 350 * KBTU });
  });

  it('cannot be given what is already derated', () => {
    expectTypeOf(us(5000)).not.toExtend<SeaLevelInput>();
    expectTypeOf<Parameters<typeof inputAtAltitude>[0]>().toEqualTypeOf<SeaLevelInput>();
  });

  it('never gives more higher up, and refuses what is off the map', () => {
    fc.assert(
      fc.property(fc.integer({ min: -500, max: 14_000 }), fc.integer({ min: 1, max: 900 }), (feet, more) => {
        expect(us(feet + more).heatInput).toBeLessThanOrEqual(us(feet).heatInput);
      }),
    );
    expect(inputAtAltitude(rated, { altitude: 30_000 * FOOT, rule: US_DERATE }).ok).toBe(false);
  });
});
