/** Figures of the heat line as short text, in the reader's units. */
import { quantity } from '@firstfire/engine';
import type { AppText } from '../text/app-text.ts';

const { HOUR } = quantity;
const SHORT = 2 * HOUR;

export function timeText(si: number, text: AppText): string {
  const unit = si < SHORT ? 'min' : 'h';
  const value = quantity.fromSi(si, unit, 'time');
  return text.quantity(si, { unit, kind: 'time', digits: value >= 100 ? 3 : 2 });
}

/** A step of time, or hours of a day, halves and all: `5 min`, `1 h`, `13.5 h`. */
export function hoursText(si: number, text: AppText): string {
  const unit = si > 0 && si < HOUR ? 'min' : 'h';
  const value = quantity.fromSi(si, unit, 'time');
  return `${numberText(value, text, Number.isInteger(value) ? 0 : 1)} ${text.unit(unit)}`;
}

export function temperatureText(si: number, text: AppText): string {
  const unit = quantity.preferredUnit('temperature', text.reader.system);
  return text.quantity(si, { unit, kind: 'temperature', digits: 3 });
}

export function rateText(si: number, text: AppText): string {
  const unit = quantity.preferredUnit('heat-rate', text.reader.system);
  if (si === 0) return `0 ${text.unit(unit)}`;
  const digits = Math.abs(quantity.fromSi(si, unit, 'heat-rate')) < 10 ? 2 : 3;
  return text.quantity(si, { unit, kind: 'heat-rate', digits });
}

/** The trade names heaters by it. */
export function inputText(si: number, text: AppText): string {
  const unit = quantity.preferredUnit('heat-rate', text.reader.system);
  return text.quantity(si, { unit, kind: 'heat-rate', digits: 3 });
}

export function shareText(share: number, text: AppText): string {
  const gap = text.reader.speech.figures.marks?.percent ?? '';
  return `${Math.round(share * 100)}${gap}%`;
}

export function numberText(value: number, text: AppText, decimals = 0): string {
  const { marks } = text.reader.speech.figures;
  return quantity.formatNumber(value, { decimals, group: true, ...(marks === undefined ? {} : { marks }) });
}

/** `May`, of 1 to 12. */
export function monthText(month: number, text: AppText, width: 'long' | 'short' | 'narrow' = 'long'): string {
  const format = new Intl.DateTimeFormat(text.reader.speech.locale, { month: width, timeZone: 'UTC' });
  return format.format(new Date(Date.UTC(2001, month - 1, 1)));
}

/** The losses are known for water up to here, K. */
const WARMEST = 323.15;

/** Where even the warmest water that can be reckoned with is not the limit, that is all that is said. */
export function plateauText(plateau: number, text: AppText): string {
  return plateau > WARMEST
    ? text.phrase('heat.over', { value: temperatureText(WARMEST, text) })
    : temperatureText(plateau, text);
}

/** With a large first letter: the name of a month begins a sentence here. */
export function sentence(said: string, text: AppText): string {
  return said.slice(0, 1).toLocaleUpperCase(text.reader.speech.locale) + said.slice(1);
}
