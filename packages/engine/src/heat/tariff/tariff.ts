/**
 * What energy costs: a fixed charge a month and prices by blocks of what the month used.
 *
 *     cost of a month = fixed + Σ price_k·(energy that falls into block k)
 *
 * Money is a plain number in whichever currency the prices are. Taxes that go with the energy belong in the prices.
 *
 * Source: arithmetic; block tariffs as utilities print them, *common practice, no source*.
 * Range: prices and charges from 0; upper ends of blocks rise; every month has one price list.
 * Errors: anything else is an issue with the place in the tariff.
 *
 * Worked example: 12 a month, 0.90 a therm for the first 50, 1.30 after: 80 therms → 12 + 45 + 39 = 96.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';

export interface Block {
  /** J of the month at which the block ends; the last block has none. */
  readonly upTo?: number;
  /** Money a joule. */
  readonly price: number;
}

export interface PriceList {
  /** Months (1 to 12) in which it holds; a tariff of one list leaves it out. */
  readonly months?: readonly number[];
  readonly blocks: readonly Block[];
}

export interface Tariff {
  /** Money a month, used or not. */
  readonly fixedCharge: number;
  readonly lists: readonly PriceList[];
}

/** A tariff of one price. */
export function flatTariff(price: number, fixedCharge = 0): Tariff {
  return { fixedCharge, lists: [{ blocks: [{ price }] }] };
}

const MONTHS = 12;

export interface Bill {
  /** Money in each month. */
  readonly months: readonly number[];
  readonly total: number;
}

/** The bill of a year's energy (J in each of twelve months). */
export function bill(tariff: Tariff, energy: readonly number[]): Result<Bill> {
  const issues = [...tariffIssues(tariff), ...energyIssues(energy)];
  if (issues.length > 0) return fail(...issues);
  const months = energy.map((used, m) => tariff.fixedCharge + blockCost(blocksOf(tariff, m + 1), used));
  return ok({ months, total: months.reduce((a, b) => a + b, 0) });
}

/** Money for a month's energy by its blocks. */
function blockCost(blocks: readonly Block[], used: number): number {
  let [cost, from] = [0, 0];
  for (const { upTo = Number.POSITIVE_INFINITY, price } of blocks) {
    cost += Math.max(0, Math.min(used, upTo) - from) * price;
    from = upTo;
  }
  return cost;
}

function blocksOf({ lists }: Tariff, month: number): readonly Block[] {
  return lists.find((list) => list.months === undefined || list.months.includes(month))?.blocks ?? [];
}

/** Everything that is wrong with a tariff. */
export function tariffIssues(tariff: Tariff): Issue[] {
  const issues: Issue[] = [];
  if (!(tariff.fixedCharge >= 0 && Number.isFinite(tariff.fixedCharge)))
    issues.push({ code: 'out-of-range', where: 'fixedCharge', found: tariff.fixedCharge, min: 0 });
  for (let month = 1; month <= MONTHS; month++) {
    const count = tariff.lists.filter((list) => list.months?.includes(month) ?? true).length;
    if (count !== 1)
      issues.push({
        code: 'ill-formed',
        where: `lists.month.${month}`,
        found: count,
        reason: 'not-one-list',
      });
  }
  tariff.lists.forEach((list, i) => {
    issues.push(...blockIssues(list.blocks, `lists.${i + 1}`));
  });
  return issues;
}

function blockIssues(blocks: readonly Block[], where: string): Issue[] {
  const issues: Issue[] = [];
  let before = 0;
  blocks.forEach(({ upTo, price }, k) => {
    const here = `${where}.blocks.${k + 1}`;
    if (!(price >= 0 && Number.isFinite(price)))
      issues.push({ code: 'out-of-range', where: `${here}.price`, found: price, min: 0 });
    const last = k === blocks.length - 1;
    if (last !== (upTo === undefined))
      issues.push({
        code: 'ill-formed',
        where: here,
        reason: last ? 'last-block-ends' : 'block-without-end',
      });
    if (upTo !== undefined && !(upTo > before))
      issues.push({ code: 'contradiction', where: `${here}.upTo`, found: upTo, min: before, kind: 'energy' });
    before = upTo ?? before;
  });
  if (blocks.length === 0) issues.push({ code: 'ill-formed', where, reason: 'no-blocks' });
  return issues;
}

function energyIssues(energy: readonly number[]): Issue[] {
  if (energy.length !== MONTHS)
    return [{ code: 'ill-formed', where: 'energy', found: energy.length, reason: 'not-twelve-months' }];
  return energy.flatMap((used, m) =>
    used >= 0 && Number.isFinite(used)
      ? []
      : [{ code: 'out-of-range', where: `energy.${m + 1}`, found: used, min: 0, kind: 'energy' } as const],
  );
}
