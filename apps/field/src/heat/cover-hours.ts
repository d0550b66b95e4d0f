/** Hours a day under the cover as something that can be moved. */
import { quantity } from '@firstfire/engine';
import type { Sliding } from '../ui/slide.ts';

const { DAY, HOUR } = quantity;

export const COVER_STEPS: readonly number[] = [HOUR / 2, HOUR, 4 * HOUR];
export const USUAL_COVER_STEP = HOUR;

export function coverSliding(basin: string, hours: number): Sliding {
  const at = { collection: 'basins', id: basin, field: 'coverHours' };
  return { at, value: hours, step: HOUR / 2, large: 4 * HOUR, least: 0, most: DAY, made };
}

function made(covered: number) {
  return { value: quantity.fromSi(covered, 'h', 'time'), unit: 'h', how: 'told' } as const;
}
