/** Figures of a working: pure numbers stay numbers, absolute pressures show the differences that drive the flow. */
import { quantity } from '@firstfire/engine';
import type { AppText } from '../text/app-text.ts';
import { type Units, unitFor } from '../text/figures.ts';

export function workingValue(
  value: number,
  kind: quantity.Kind | undefined,
  { text, medium }: { readonly text: AppText; readonly medium: Units['medium'] },
): string {
  const { figures } = text.reader.speech;
  if (kind === undefined || kind === 'ratio')
    return quantity.formatNumber(value, { digits: 4, group: true, ...figures });
  const unit = unitFor(value, kind, { system: text.reader.system, medium });
  return text.quantity(value, { unit, kind, digits: kind === 'absolute-pressure' ? 6 : 4 });
}
