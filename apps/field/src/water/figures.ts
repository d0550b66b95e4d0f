/** Figures of the water line as short text, in the reader's units. */
import { quantity } from '@firstfire/engine';
import type { AppText } from '../text/app-text.ts';

/** As many digits as a gauge beside a pool is read to: 7.9, 14.7, 76, 149.5. */
function digitsFor(value: number): number {
  const size = Math.abs(value);
  if (size < 9.95) return 2;
  return size < 19.95 || size >= 99.5 ? 3 : 2;
}

function short(si: number, kind: quantity.Kind, text: AppText): string {
  const unit = quantity.preferredUnit(kind, text.reader.system);
  const digits = digitsFor(quantity.fromSi(si, unit, kind));
  return text.quantity(si, { unit, kind, digits });
}

export const flowText = (si: number, text: AppText): string => short(si, 'volume-flow', text);
export const pressureText = (si: number, text: AppText): string =>
  short(si, 'pressure', text).replace(/^-/, '−');
export const velocityText = (si: number, text: AppText): string => short(si, 'velocity', text);

/** A tenth of a degree. */
export function temperatureText(si: number, text: AppText): string {
  return text.quantity(si, {
    unit: quantity.preferredUnit('temperature', text.reader.system),
    kind: 'temperature',
    digits: 3,
  });
}

/** With its sign. */
export function riseText(si: number, text: AppText): string {
  return `+${short(si, 'temperature-difference', text)}`;
}

/** Lost, with its sign. */
export function lossText(si: number, text: AppText): string {
  return `−${short(Math.abs(si), 'pressure-difference', text)}`;
}

function number(value: number, text: AppText, decimals: number): string {
  const { marks } = text.reader.speech.figures;
  return quantity.formatNumber(value, { decimals, group: true, ...(marks === undefined ? {} : { marks }) });
}

/** Head as feet or metres of water: here it cannot be taken for a length. */
export function headText(si: number, text: AppText): string {
  const unit = text.reader.system === 'si' ? 'm' : 'ft';
  const value = quantity.fromSi(si, unit, 'length');
  return `${number(value, text, Math.abs(value) < 9.95 ? 1 : 0)} ${unit}`;
}

/** Turns a minute. */
export function rpmText(si: number | undefined, text: AppText): string {
  return si === undefined ? '?' : text.phrase('water.rpm', { count: number(si * 60, text, 0) });
}

/** A share of the handle's way, in whole per cent. */
export function shareText(share: number, text: AppText): string {
  const gap = text.reader.speech.figures.marks?.percent ?? '';
  return `${Math.round(share * 100)}${gap}%`;
}

/** A bare figure of a scale. */
export function bareText(value: number, text: AppText): string {
  return number(value, text, Number.isInteger(value) ? 0 : 1);
}

export interface Scale {
  readonly unit: string;
  /** Round values in that unit, from zero or below to the greatest. */
  readonly ticks: readonly number[];
  /** A value in SI as a share of the scale. */
  readonly at: (si: number) => number;
}

/** A scale from zero to a little over the greatest value. */
export function scaleTo(
  most: number,
  kind: quantity.Kind,
  { text, least = 0 }: { text: AppText; least?: number },
): Scale {
  const unit =
    kind === 'head'
      ? text.reader.system === 'si'
        ? 'm'
        : 'ft'
      : quantity.preferredUnit(kind, text.reader.system);
  const of = (si: number): number => quantity.fromSi(si, unit, kind === 'head' ? 'length' : kind);
  const [low, high] = [Math.min(0, of(least)), Math.max(of(most), 1e-9)];
  const step = stepFor(high - low);
  const from = Math.floor(low / step) * step;
  const ticks: number[] = [];
  for (let i = 0; from + i * step <= high; i += 1) ticks.push(Number((from + i * step).toPrecision(6)));
  const end = high + step * 0.25;
  return { unit, ticks, at: (si) => (of(si) - from) / (end - from) };
}

/** 1, 2 or 5 of a power of ten, so that about five fit. */
function stepFor(span: number): number {
  const rough = span / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  return (([1, 2, 5].find((one) => one * power >= rough) ?? 10) as number) * power;
}

/** Where a tick stands, as a share of its scale. */
export function shareOfTick({ at, unit }: Scale, tick: number, kind: quantity.Kind): number {
  return at(quantity.si(tick, unit, kind === 'head' ? 'length' : kind));
}
