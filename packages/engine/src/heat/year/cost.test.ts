import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { flatTariff } from '../tariff/index.ts';
import { yearCost } from './cost.ts';

const THERM = 105_505_585.262;
const KILOWATT_HOUR = 3.6e6;
const months = (value: number): number[] => Array.from({ length: 12 }, () => value);
const used = { fuel: months(100 * THERM), electricity: months(50 * KILOWATT_HOUR), firingHours: months(40) };

describe('the cost of a year', () => {
  // 40 CFR 98 Table C-1: 53.06 kg of carbon dioxide a million Btu of natural gas, 62.87 of propane; 1 therm is a tenth.
  it('adds fuel and electricity, and gives off what the table says', () => {
    const prices = {
      fuel: 'natural',
      fuelTariff: flatTariff(1.2 / THERM, 10),
      electricityTariff: flatTariff(0.2 / KILOWATT_HOUR),
    } as const;
    const cost = expectOk(yearCost(used, prices));
    expect(cost.fuel.total).toBeCloseTo(1200 * 1.2 + 120, 6);
    expect(cost.electricity?.total).toBeCloseTo(600 * 0.2, 6);
    expect(cost.total).toBeCloseTo(1440 + 120 + 120, 6);
    expect(cost.carbonDioxide).toBeCloseTo(1200 * 5.306, 3);
    const propane = expectOk(yearCost(used, { fuel: 'propane', fuelTariff: flatTariff(2 / THERM) }));
    expect(propane.carbonDioxide).toBeCloseTo(1200 * 6.287, 3);
    expect(propane.electricity).toBeUndefined();
  });

  it('counts the carbon of electricity where its factor is given', () => {
    const prices = {
      fuel: 'natural',
      fuelTariff: flatTariff(0),
      electricityCarbon: 0.4 / KILOWATT_HOUR,
    } as const;
    expect(expectOk(yearCost(used, prices)).carbonDioxide).toBeCloseTo(1200 * 5.306 + 600 * 0.4, 3);
  });

  it('is refused with a tariff that is none', () => {
    const answer = yearCost(used, {
      fuel: 'natural',
      fuelTariff: flatTariff(-1),
      electricityTariff: flatTariff(Number.NaN),
    });
    expect(answer.ok ? 0 : answer.issues.length).toBe(2);
  });
});
