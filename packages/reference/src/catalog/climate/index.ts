import { NORTHERN_PLACES } from './northern.ts';
import type { ClimatePlace } from './place.ts';
import { TYPICAL_YEARS } from './typical-year.ts';

export { type ClimatePlace, GROUND_DEPTHS, normalsOf } from './place.ts';

/** Every place whose climate is on board. */
export const PLACES: readonly ClimatePlace[] = [...TYPICAL_YEARS, ...NORTHERN_PLACES];
