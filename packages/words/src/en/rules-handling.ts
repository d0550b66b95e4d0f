import type { RuleWords } from '../dictionary.ts';

export const RULES_HANDLING: Readonly<Record<string, RuleWords>> = {
  'place.lift': {
    title: 'People can lift the heater',
    asks: 'Each one’s even share of the heater is no more than one person may lift with that reach, height, twist and grip.',
    mend: 'A hand truck, stair climber, lift gate or hoist; or more people and a shorter reach. Two seldom share a weight evenly, and carrying over steps or soft ground takes equipment in any case.',
  },
  'place.way-wide': {
    title: 'Way wide enough for the heater',
    asks: 'The narrowest gate or passage from the van to the pad lets the heater through on its narrower side, with room for a hand beside it.',
    mend: 'Another way, a gate taken off its hinges, or a crane.',
  },
  'place.way-firm': {
    title: 'Carried on firm ground only',
    asks: 'People carry the heater on firm and level ground; over steps or soft ground equipment does.',
    mend: 'Boards, a stair climber or a hoist.',
  },
  'place.equipment-bears': {
    title: 'Equipment bears the heater',
    asks: 'The rated load of cart, hoist or crane is no less than the heater weighs.',
    mend: 'Stronger equipment; nobody under the load.',
  },
};
