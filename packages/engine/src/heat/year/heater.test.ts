import { describe, expect, it } from 'vitest';
import { type Heater, heaterIssues, heaterMonths } from './heater.ts';

const BTU = 1055.05585262;
const WATT = BTU / 3600;

describe('a heater’s year', () => {
  // 10 CFR 430 Subpart B Appendix P, current version (formulas from memory): BOH 104 h, POH 4,464 h.
  it('burns what the test procedure computes, with a pilot and without', () => {
    const spread = (total: number): number[] => Array.from({ length: 12 }, () => total / 12);
    const year = (input: number, heater: Omit<Heater, 'output'>): number => {
      const output = input * WATT * heater.efficiency;
      const work = { heat: spread(104 * 3600 * output), hours: spread(8760), inSeason: spread(4464) };
      return heaterMonths({ output, ...heater }, work).fuel.reduce((a, b) => a + b, 0) / BTU;
    };
    expect(year(150_000, { efficiency: 0.8, pilot: 1000 * WATT })).toBeCloseTo(24_256_000, 0);
    expect(year(250_000, { efficiency: 0.82 })).toBeCloseTo(26_000_000, 0);
    // The older version counts the pilot in the season only: 104·150,000 + 4,360·1,000.
    const seasonal = { efficiency: 0.8, pilot: 1000 * WATT, pilotOutOfSeason: 'out' } as const;
    expect(year(150_000, seasonal)).toBeCloseTo(19_960_000, 0);
  });

  // The same procedure: 104 h of 700 Btu/h while firing, 4,360 h of 8 W: 72,800 + 119,014 Btu.
  it('draws power while firing and while waiting', () => {
    const months = Array.from({ length: 12 }, () => 0);
    const heat = [104 * 3600 * 60_000, ...months.slice(1)];
    const hours = [4464, ...months.slice(1)];
    const heater = { output: 60_000, efficiency: 0.82, firingPower: 700 * WATT, standbyPower: 8 };
    const { electricity, firingHours } = heaterMonths(heater, { heat, hours, inSeason: hours });
    expect(firingHours[0]).toBeCloseTo(104, 9);
    expect((electricity[0] ?? 0) / BTU).toBeCloseTo(72_800 + (4360 * 8) / WATT, 0);
  });

  it('is refused with an impossible efficiency or a pilot like a furnace', () => {
    expect(heaterIssues({ output: 1e5, efficiency: 0.82 })).toEqual([]);
    expect(heaterIssues({ output: 1e5, efficiency: 82 })[0]).toMatchObject({ where: 'heater.efficiency' });
    expect(heaterIssues({ output: -1, efficiency: 0.8, pilot: 1e6 })).toHaveLength(2);
  });
});
