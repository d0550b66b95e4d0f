/** What a unit is called in the reader's words. */
import { quantity } from '@firstfire/engine';
import { unitText } from './keys.ts';

export function unitName(
  unit: string,
  kind: quantity.Kind,
  labels: Readonly<Record<string, string>>,
): string {
  const label = unitText(unit, kind);
  return label === '1' ? '' : quantity.labelInWords(label, labels);
}
