/** What the field app says, area by area. */
import { SHELL } from './shell.ts';

export const APP: Readonly<Record<string, string>> = { ...SHELL };
