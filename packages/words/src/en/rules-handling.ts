import type { RuleWords } from '../dictionary.ts';

export const RULES_HANDLING: Readonly<Record<string, RuleWords>> = {
  'place.lift': {
    title: 'People can lift the heater',
    asks: 'Each one’s even share of the heater is no more than one person may lift with that reach, height, twist and grip.',
    mend: 'A hand truck, stair climber, lift gate or hoist; or more people and a shorter reach. Two seldom share a weight evenly, and carrying over steps or soft ground takes equipment in any case.',
  },
};
