/** Figures of the gas line as text, in the reader's units. */
import { quantity } from '@firstfire/engine';
import type { GasLink, JobView } from '@firstfire/job';
import { unitFor } from '@firstfire/words';
import { readingText } from '../entry/reading.ts';
import type { AppText } from '../text/app-text.ts';
import { type Scale, ticksBetween } from './scale.ts';

/** The unit in which the pressures of one scale are written: that of its greatest. */
export function pressureUnit(greatest: number, text: AppText): string {
  return unitFor(greatest, 'pressure', { system: text.reader.system, medium: 'gas' });
}

/** Digits behind the sign by which the unit is read on a gauge. */
const DECIMALS: Readonly<Record<string, number>> = { 'in w.c.': 2, psi: 2, kPa: 2, mbar: 1, Pa: 0, bar: 3 };

/** A pressure without its unit. */
export function bare(value: number, unit: string, text: AppText, decimals = DECIMALS[unit] ?? 2): string {
  const { marks } = text.reader.speech.figures;
  const number = quantity.fromSi(value, unit, 'pressure');
  return quantity
    .formatNumber(number, { decimals, ...(marks === undefined ? {} : { marks }) })
    .replace('-', '−');
}

/** What is lost, with its sign. */
export function loss(value: number, unit: string, text: AppText): string {
  const figure = bare(Math.abs(value), unit, text);
  return Number(figure.replace(/\D/g, '')) === 0 ? figure : `${value < 0 ? '+' : '−'}${figure}`;
}

/** A pressure with its unit, in enough digits to tell it from a limit. */
export function pressure(value: number, text: AppText, limit?: number): string {
  const unit = pressureUnit(Math.max(value, limit ?? value), text);
  const style = { kind: 'pressure', digits: 3, style: 'trade', ...text.reader.speech.figures } as const;
  return limit === undefined
    ? quantity.formatQuantity(value, unit, style)
    : quantity.formatAgainstLimit([value, limit], unit, style).value;
}

/** A trade size as one says it: 1-1/4 in steel is inches, corrugated tubing goes by its number. */
export function sizeText(size: string | undefined): string {
  if (size === undefined) return '?';
  return size.startsWith('EHD') ? size : `${size}″`;
}

/** As it was typed, where that is short; else in the reader's unit. */
export function lengthText(link: Pick<GasLink, 'id' | 'length'>, view: JobView, text: AppText): string {
  if (link.length === undefined) return '?';
  const reading = view.record('gasSegments', link.id).reading('length');
  const typed = reading === undefined ? '' : readingText(reading, text);
  return typed !== '' && typed.length <= SHORT ? typed : text.show(link.length, 'length');
}

const SHORT = 7;

export function fittingCount({ fittings }: Pick<GasLink, 'fittings'>): number {
  return Object.values(fittings).reduce((sum, one) => sum + one, 0);
}

export interface Tick {
  readonly y: number;
  readonly text: string;
}

/** The lines of a scale, round in the reader's unit, each with its figure. */
export function ticksOf({ low, high, y }: Scale, unit: string, text: AppText): readonly Tick[] {
  const size = quantity.si(1, unit, 'pressure');
  const values = ticksBetween(low / size, high / size);
  const decimals = Math.max(0, ...values.map((one) => String(one).split('.')[1]?.length ?? 0));
  return values.map((value) => ({ y: y(value * size), text: bare(value * size, unit, text, decimals) }));
}
