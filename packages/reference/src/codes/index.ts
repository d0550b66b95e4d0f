/** Every rule the project carries. A line that has none is not built yet, and says so. */
import type { AnyRule, Line } from '../evaluate/index.ts';
import { AIR_RULES } from './air/index.ts';
import { BOILER_RULES } from './boiler/index.ts';
import { COMBUSTION_RULES } from './combustion/index.ts';
import { ENERGY_RULES } from './energy/index.ts';
import { GAS_RULES } from './gas/index.ts';
import { HANDLING_RULES } from './handling/index.ts';
import { HEAT_RULES } from './heat/index.ts';
import { PERMIT_RULES } from './permits/index.ts';
import { PLACE_RULES } from './place/index.ts';
import { POWER_RULES } from './power/index.ts';
import { WATER_RULES } from './water/index.ts';

export const RULES: readonly AnyRule[] = [
  ...HEAT_RULES,
  ...GAS_RULES,
  ...AIR_RULES,
  ...COMBUSTION_RULES,
  ...WATER_RULES,
  ...POWER_RULES,
  ...PLACE_RULES,
  ...HANDLING_RULES,
  ...ENERGY_RULES,
  ...BOILER_RULES,
  ...PERMIT_RULES,
];

export { DUTIES, type Duty, dutyOf, LICENCES, type Licence, WORKS, type Work } from './permits/index.ts';
export { USUAL_CLEARANCE, USUAL_DISTANCE } from './place/index.ts';

/** Lines whose checks exist; the others answer *not built*, never *unknown* or *meets*. */
export const BUILT_LINES: ReadonlySet<Line> = new Set(RULES.map((rule) => rule.line));
