/** The whole unit table, by id. */
import type { Unit } from '../unit.ts';
import { STANDARD_UNITS } from './gas.ts';
import { HEAT_UNITS } from './heat.ts';
import { MATTER_UNITS } from './matter.ts';
import { OTHER_UNITS } from './other.ts';
import { SPACE_UNITS } from './space.ts';

/**
 * Every named unit, id → unit.
 *
 * Source: NIST SP 811 (2008), Appendix B; AWG after ASTM B258, gas bases after `gas-base.ts`.
 */
export const UNITS: ReadonlyMap<string, Unit> = tabulate([
  ...SPACE_UNITS,
  ...MATTER_UNITS,
  ...HEAT_UNITS,
  ...OTHER_UNITS,
  ...STANDARD_UNITS,
]);

function tabulate(units: readonly Unit[]): ReadonlyMap<string, Unit> {
  const table = new Map<string, Unit>();
  for (const unit of units) {
    if (table.has(unit.id)) throw new Error(`two units are called ${unit.id}`);
    table.set(unit.id, unit);
  }
  return table;
}
