/** What the field app says, area by area. */
import { ENTRY } from './entry.ts';
import { FLOWS } from './flows.ts';
import { GAS } from './gas.ts';
import { HEAT } from './heat.ts';
import { KEEPING } from './keeping.ts';
import { NAMEPLATE } from './nameplate.ts';
import { SETTINGS } from './settings.ts';
import { SHELL } from './shell.ts';
import { SURVEY } from './survey.ts';
import { UPDATE } from './update.ts';
import { WATER } from './water.ts';
import { WORKING } from './working.ts';

export const APP: Readonly<Record<string, string>> = {
  ...ENTRY,
  ...FLOWS,
  ...NAMEPLATE,
  ...KEEPING,
  ...GAS,
  ...HEAT,
  ...SETTINGS,
  ...SHELL,
  ...SURVEY,
  ...UPDATE,
  ...WATER,
  ...WORKING,
};
