import type { Suite } from '../suite.ts';
import { NOAA_SUITES } from './noaa-normals.ts';
import { REDBOOK_SUITES } from './redbook.ts';
import { SKY_SUITES } from './sky.ts';
import { SOLAR_SUITES } from './solar.ts';
import { STATION_SUITES } from './station-hours.ts';
import { TYPICAL_YEAR_SUITES } from './typical-year.ts';

export const CLIMATE_SUITES: readonly Suite[] = [
  ...SOLAR_SUITES,
  ...STATION_SUITES,
  ...TYPICAL_YEAR_SUITES,
  ...SKY_SUITES,
  ...NOAA_SUITES,
  ...REDBOOK_SUITES,
];
