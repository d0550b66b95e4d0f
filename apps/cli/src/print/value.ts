/** Values as text, for a terminal. */
import { quantity } from '@firstfire/engine';

/** An SI value in a unit, or in the usual one of its kind, to the digits a reader in the field can use. */
export function showIn(si: number, unit: string | undefined, kind?: quantity.Kind): string {
  const chosen = unit ?? (kind === undefined ? '1' : quantity.preferredUnit(kind, 'us'));
  if (!Number.isFinite(si)) return String(si);
  return quantity.formatQuantity(si, chosen, { digits: 4, ...(kind === undefined ? {} : { kind }) });
}
