/** What a typed text was read as, in the reader's own marks and words: as long as it takes, and no longer. */
import { quantity } from '@firstfire/engine';

export interface Echoed {
  readonly si: number;
  /** In the unit. */
  readonly value: number | string | object;
  readonly unit: string;
  readonly kind: quantity.Kind;
}

export type Figures = Pick<quantity.FormatOptions, 'marks' | 'labels'>;

export function echoText({ si, value, unit, kind }: Echoed, { marks, labels }: Figures): string {
  const digits = Math.max(3, String(value).replace(/\D/g, '').slice(0, 6).length);
  const shown = quantity.formatQuantity(si, unit, {
    kind,
    style: 'trade',
    shortBase: true,
    ...(isTape(value, unit, kind) ? { inchParts: unit === 'in' ? 64 : 32 } : digits > 6 ? {} : { digits }),
    ...(marks === undefined ? {} : { marks }),
    ...(labels === undefined ? {} : { labels }),
  });
  return withoutZeros(shown, marks?.decimal ?? '.');
}

/** Digits asked for leave zeros behind: 84.000 → 84. The stops of `in w.c.` stay. */
function withoutZeros(shown: string, decimal: string): string {
  const mark = decimal === '.' ? '\\.' : decimal;
  return shown.replace(
    new RegExp(`^(\\D*[\\d\\s.,]*?\\d)${mark}(\\d*?)0+(?=\\D|$)`, 'u'),
    (_, whole, part) => (part === '' ? whole : `${whole}${decimal}${part}`),
  );
}

/** Feet are read off a tape; inches where they are a fraction, and else as they were typed: a bore of 1.049 in. */
function isTape(value: Echoed['value'], unit: string, kind: quantity.Kind): boolean {
  if (unit === 'ft') return kind === 'length';
  return unit === 'in' && typeof value === 'number' && Number.isInteger(value * 64);
}
