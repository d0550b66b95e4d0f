/** The register of published figures that were looked for, by chapter. */
import { AIR_CHAPTER } from './air.ts';
import type { Chapter } from './entry.ts';
import { GAS_CHAPTER } from './gas.ts';
import { CLIMATE_CHAPTER, HEAT_CHAPTER } from './heat.ts';
import { PLACE_CHAPTER, RELIEF_CHAPTER } from './place.ts';
import { POWER_CHAPTER } from './power.ts';
import { COMBUSTION_CHAPTER, SERVICE_CHAPTER } from './service.ts';
import { POOL_CHAPTER, WATER_CHAPTER } from './water.ts';

export type { Chapter, Entry } from './entry.ts';

export const REGISTER: readonly Chapter[] = [
  GAS_CHAPTER,
  AIR_CHAPTER,
  POWER_CHAPTER,
  PLACE_CHAPTER,
  RELIEF_CHAPTER,
  WATER_CHAPTER,
  POOL_CHAPTER,
  HEAT_CHAPTER,
  CLIMATE_CHAPTER,
  COMBUSTION_CHAPTER,
  SERVICE_CHAPTER,
];
