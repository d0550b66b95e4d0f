/** Values as text, for a terminal. */
import { quantity } from '@firstfire/engine';
import type { Show, Speech } from '@firstfire/words';

export interface Value {
  readonly si: number;
  readonly unit?: string | undefined;
  readonly kind?: quantity.Kind | undefined;
}

/**
 * An SI value in a unit, or in the usual one of its kind, to the digits a reader in the field can use. The unit bears
 * the name it is typed by, in every language; only the marks of the number are the reader's.
 */
export function showIn({ si, unit, kind }: Value, speech?: Speech): string {
  const chosen = unit ?? (kind === undefined ? '1' : quantity.preferredUnit(kind, 'us'));
  if (!Number.isFinite(si)) return String(si);
  const marks = speech?.figures.marks;
  return quantity.formatQuantity(si, chosen, {
    digits: 4,
    ...(kind === undefined ? {} : { kind }),
    ...(marks === undefined ? {} : { marks }),
  });
}

/** Values of an issue in the usual unit of their kind, as a reader writes numbers. */
export function showUsual(speech: Speech): Show {
  return (value, kind) =>
    kind === undefined ? quantity.formatNumber(value, speech.figures) : showIn({ si: value, kind }, speech);
}

/** The same with points, for other programs. */
export const showPlain: Show = (value, kind) =>
  kind === undefined ? String(value) : showIn({ si: value, kind });
