/** The opening of the bypass as something that can be turned. */
import type { WaterPicture } from '@firstfire/job';
import type { Sliding } from '../ui/slide.ts';

const BYPASS = { collection: 'waterLoop', id: '-', field: 'bypassOpening' } as const;

/** Shares of the handle's way: by an arrow, by an arrow with Shift or a Page key. */
const STEP = 0.01;
const LARGE = 0.1;

/** What a tap may turn it by, and does at first. */
export const TURNS: readonly number[] = [STEP, 0.05, LARGE];
export const USUAL_TURN = 0.05;

export function bypassSliding({ bypass: { opening = 0 } }: Pick<WaterPicture, 'bypass'>): Sliding {
  return { at: BYPASS, value: opening, step: STEP, large: LARGE, least: 0, most: 1, made };
}

function made(opening: number) {
  return { value: Math.round(opening * 100), unit: '%', how: 'drawing' } as const;
}
