import type { RuleWords } from '../dictionary.ts';

export const RULES_HEAT: Readonly<Record<string, RuleWords>> = {
  'heat.hold-temperature': {
    title: 'Heaters hold the water on the design day',
    asks: 'On the mean day of the design month, else of the coldest month of use, without sun, the heaters together give at least what all water held warm loses at its set temperature. Indoors: in the room as it is.',
    mend: 'More heater, a cover for more hours, shelter from the wind, or a lower set temperature.',
  },
  'heat.warm-in-time': {
    title: 'Warm in the time wanted',
    asks: 'From the starting temperature on the design day, losses counted, the water is warm within the time wanted, with its heaters to itself.',
    mend: 'More heater, a later start promised to the customer, or a cover while it warms.',
  },
  'heat.plateau': {
    title: 'The set temperature can be reached at all',
    asks: 'The temperature at which the losses take all the heat of its heaters stands above the set temperature; water that boils before is told at its boiling point.',
    mend: 'More heater or less loss: no length of time will do it.',
  },
  'heat.not-too-hot': {
    title: 'Water no hotter than people bear',
    asks: 'The set temperature is no more than 104 °F (40 °C).',
    mend: 'Set it lower. Hotter water can kill, children and people with heart trouble first.',
  },
};
