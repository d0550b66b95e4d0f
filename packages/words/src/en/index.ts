/** English. */
import type { Dictionary } from '../dictionary.ts';
import { APP } from './app/index.ts';
import { CHOICES } from './choices.ts';
import { CLI } from './cli.ts';
import { FACTS } from './facts.ts';
import { FACTS_CODES } from './facts-codes.ts';
import { FORMULAS } from './formulas.ts';
import { HELP } from './help/index.ts';
import { ISSUES } from './issues.ts';
import { PHRASES } from './phrases.ts';
import { READINGS } from './readings.ts';
import { RULES_AIR } from './rules-air.ts';
import { RULES_CHEMISTRY } from './rules-chemistry.ts';
import { RULES_CODES } from './rules-codes.ts';
import { RULES_COMBUSTION } from './rules-combustion.ts';
import { RULES_GAS } from './rules-gas.ts';
import { RULES_HANDLING } from './rules-handling.ts';
import { RULES_HEAT } from './rules-heat.ts';
import { RULES_PLACE } from './rules-place.ts';
import { RULES_POWER } from './rules-power.ts';
import { RULES_VENT } from './rules-vent.ts';
import { RULES_WATER } from './rules-water.ts';
import { SOURCES } from './sources.ts';
import { SUMS } from './sums.ts';
import { UNITS } from './units.ts';
import { YARD } from './yard.ts';

export const EN: Dictionary = {
  lines: { heat: 'Heat', gas: 'Gas', air: 'Air', water: 'Water', power: 'Power', place: 'Place' },
  verdicts: {
    meets: 'meets',
    tight: 'tight',
    fails: 'fails',
    unknown: 'unknown',
    'does not apply': 'n/a',
    'not built': 'not built',
  },
  rules: {
    ...RULES_GAS,
    ...RULES_AIR,
    ...RULES_VENT,
    ...RULES_HEAT,
    ...RULES_WATER,
    ...RULES_CHEMISTRY,
    ...RULES_COMBUSTION,
    ...RULES_POWER,
    ...RULES_PLACE,
    ...RULES_HANDLING,
    ...RULES_CODES,
  },
  readings: READINGS,
  help: HELP,
  formulas: FORMULAS,
  issues: ISSUES,
  sums: SUMS,
  choices: CHOICES,
  units: UNITS,
  sources: SOURCES,
  phrases: { ...APP, ...PHRASES, ...CLI, ...YARD, ...FACTS, ...FACTS_CODES },
};
