import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { bill, flatTariff, heatOfSalesUnit, type Tariff } from './index.ts';

const THERM = 105_505_585.262;
const year = (january: number): number[] => [january, ...Array.from({ length: 11 }, () => 0)];

describe('a bill', () => {
  const blocks: Tariff = {
    fixedCharge: 12,
    lists: [{ blocks: [{ upTo: 50 * THERM, price: 0.9 / THERM }, { price: 1.3 / THERM }] }],
  };

  // Arithmetic of the worked example: 12 + 50 × 0.90 + 30 × 1.30.
  it('adds the fixed charge and the blocks', () => {
    const { months, total } = expectOk(bill(blocks, year(80 * THERM)));
    expect(months[0]).toBeCloseTo(96, 9);
    expect(months[1]).toBe(12);
    expect(total).toBeCloseTo(96 + 11 * 12, 9);
  });

  it('takes the price list of the season', () => {
    const winter = { months: [11, 12, 1, 2, 3], blocks: [{ price: 2 }] };
    const summer = { months: [4, 5, 6, 7, 8, 9, 10], blocks: [{ price: 1 }] };
    const energy = Array.from({ length: 12 }, () => 3);
    const { months } = expectOk(bill({ fixedCharge: 0, lists: [winter, summer] }, energy));
    expect(months).toEqual([6, 6, 6, 3, 3, 3, 3, 3, 3, 3, 6, 6]);
  });

  it('never falls when more is used, and is the flat price where the blocks are equal', () => {
    const month = fc.double({ min: 0, max: 1e11, noNaN: true });
    fc.assert(
      fc.property(month, month, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        const cost = (used: number): number => expectOk(bill(blocks, year(used))).total;
        expect(cost(more)).toBeGreaterThanOrEqual(cost(less));
        const equal: Tariff = {
          fixedCharge: 5,
          lists: [{ blocks: [{ upTo: 1e9, price: 3e-8 }, { price: 3e-8 }] }],
        };
        const flat = expectOk(bill(flatTariff(3e-8, 5), year(a))).total;
        expect(expectOk(bill(equal, year(a))).total).toBeCloseTo(flat, 6);
      }),
    );
  });

  const wrong: [string, Tariff, object][] = [
    ['a negative price', flatTariff(-1), { code: 'out-of-range', where: 'lists.1.blocks.1.price' }],
    [
      'a month without prices',
      { fixedCharge: 0, lists: [{ months: [1], blocks: [{ price: 1 }] }] },
      { reason: 'not-one-list' },
    ],
    [
      'blocks out of order',
      { fixedCharge: 0, lists: [{ blocks: [{ upTo: 5, price: 1 }, { upTo: 4, price: 1 }, { price: 1 }] }] },
      { code: 'contradiction' },
    ],
    [
      'an open end',
      { fixedCharge: 0, lists: [{ blocks: [{ upTo: 5, price: 1 }] }] },
      { reason: 'last-block-ends' },
    ],
    ['no charge that is a number', { ...flatTariff(1), fixedCharge: Number.NaN }, { where: 'fixedCharge' }],
  ];
  it.each(wrong)('is refused for %s', (_, tariff, issue) => {
    const answer = bill(tariff, year(1));
    expect(answer.ok).toBe(false);
    if (!answer.ok) expect(answer.issues[0]).toMatchObject(issue);
  });

  it('is refused for energy that is none', () => {
    expect(bill(flatTariff(1), [1]).ok).toBe(false);
    expect(bill(flatTariff(1), year(-1)).ok).toBe(false);
  });
});

describe('a unit of sale', () => {
  it('holds the heat of its definition', () => {
    expect(expectOk(heatOfSalesUnit('therm'))).toBeCloseTo(THERM, 0);
    expect(expectOk(heatOfSalesUnit('kilowatt-hour'))).toBe(3.6e6);
    // 40 CFR 98 Table C-1: 0.091 million Btu a gallon; 0.091 / 3.785411784 a litre.
    expect(expectOk(heatOfSalesUnit('gallon-of-propane')) / 1055.05585262 / 1e6).toBeCloseTo(0.091, 9);
    const litre = expectOk(heatOfSalesUnit('litre-of-propane'));
    expect(litre * 3.785411784).toBeCloseTo(expectOk(heatOfSalesUnit('gallon-of-propane')), 0);
  });

  it('needs a heating value where gas is sold by volume', () => {
    expect(expectOk(heatOfSalesUnit('cubic-metre', 38e6))).toBe(38e6);
    // 100 ft3 of 1,026 Btu/ft3 gas: 1.026 therms.
    const perCubicMetre = (1026 * 1055.05585262) / 0.028316846592;
    expect(expectOk(heatOfSalesUnit('hundred-cubic-feet', perCubicMetre)) / THERM).toBeCloseTo(1.026, 9);
    expect(heatOfSalesUnit('cubic-metre')).toMatchObject({ ok: false, issues: [{ where: 'heatingValue' }] });
  });
});
