/** What fuel gas, energy, boiler and pool codes ask of a heater: fields of it, beside its nameplate. */
import { choose, measure, text, yesNo } from './field.ts';

export const HEATER_CODES = {
  shutOffAccessible: yesNo('Its gas shut-off can be reached and turned without moving or undoing anything.'),
  gasUnion: yesNo('A union or flange between that shut-off and the heater.'),
  trapNipple: measure('length', 'Of the capped nipple of its sediment trap.', { min: 0, max: 2 }),
  ignition: choose(['electronic', 'standing pilot'], 'What lights its burner.'),
  made: text('Year and month of manufacture on the nameplate, or the day: 2019-06 or 2019-06-14.'),
  integratedEfficiency: measure('ratio', 'Integrated thermal efficiency, on heaters made from May 2028 on.', {
    min: 0.3,
    max: 1,
  }),
  offSwitch: choose(
    ['on the heater', 'beside it', 'none'],
    'Where a switch turns it off that leaves the thermostat as it is.',
  ),
  offSwitchDistance: measure('length', 'From the heater to that switch, where it stands beside it.', {
    min: 0,
    max: 500,
  }),
  reliefStamp: choose(['HV', 'other', 'none'], 'Mark of the boiler code on its relief valve.'),
  controlsBarred: yesNo('Guests of the pool cannot reach its controls.'),
  exchanger: choose(['finned tube', 'other'], 'How its heat exchanger is made.'),
  yearlyService: yesNo('It is serviced once a year, and the owner knows.'),
} as const;
