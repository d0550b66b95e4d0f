/** Sums and values of a year as text. */
import type { YearMonths } from '@firstfire/job';
import type { AppText } from '../text/app-text.ts';
import { numberText } from './figures.ts';

export function sum(of: readonly number[] = []): number {
  return of.reduce((a, b) => a + b, 0);
}

/** Money has no unit: it is that of the prices. */
export function valueIn(measure: keyof YearMonths, text: AppText): (si: number) => string {
  if (measure === 'cost') return (money) => numberText(money, text);
  return (si) => text.show(si, measure === 'fuel' ? 'energy' : 'mass');
}
