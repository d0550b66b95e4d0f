import type { RuleWords } from '../dictionary.ts';

export const RULES_AIR: Readonly<Record<string, RuleWords>> = {
  'air.combustion-air': {
    title: 'Air to burn',
    asks: 'The room’s volume, or two openings straight to outdoors, gives every burner in it its air.',
    mend: 'Keep the heater off until it has its air: larger openings, one that begins within 12 in of the top and one within 12 in of the bottom.',
  },
  'air.flue-from-openings': {
    title: 'Flue gas away from windows and doors',
    asks: 'The flue outlet of an outdoor heater stands as far from every opening of a building as the code asks.',
    mend: 'Another spot, or a vent that carries the flue gas away. Where anyone feels unwell: out, and call for help first.',
  },
  'air.no-chemicals': {
    title: 'No pool chemicals where it burns',
    asks: 'No pool chemicals are kept in the room the heater burns in: their fumes eat it, and it can light them.',
    mend: 'A store of their own for the chemicals, away from every flame.',
  },
};
