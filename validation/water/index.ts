/** The water line held against tables, handbooks and worked examples. */
import type { Suite } from '../suite.ts';
import { BANKS } from './banks.ts';
import { CLASS_160 } from './class-160.ts';
import { COLEBROOK_GRID } from './colebrook-grid.ts';
import { CRANE_EXAMPLES } from './crane-examples.ts';
import { CRANE_FT } from './crane-ft.ts';
import { FITTINGS } from './fittings.ts';
import { HAZEN_WILLIAMS } from './hazen-williams.ts';
import { ILLINOIS_SCHEDULE_40 } from './illinois-schedule-40.ts';
import { PIPE_DIMENSIONS } from './pipe-dimensions.ts';
import { TEXTBOOK } from './textbook.ts';
import { VALVES } from './valves.ts';

export const WATER_SUITES: readonly Suite[] = [
  COLEBROOK_GRID,
  ...HAZEN_WILLIAMS,
  ILLINOIS_SCHEDULE_40,
  ...CLASS_160,
  ...PIPE_DIMENSIONS,
  CRANE_FT,
  ...CRANE_EXAMPLES,
  ...TEXTBOOK,
  ...FITTINGS,
  ...VALVES,
  BANKS,
];
