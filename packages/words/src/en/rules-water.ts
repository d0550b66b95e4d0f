import type { RuleWords } from '../dictionary.ts';

export const RULES_WATER: Readonly<Record<string, RuleWords>> = {
  'water.heater-flow': {
    title: 'Water flow through the heater',
    asks: 'At this speed and filter state the heater gets no less and no more water than its nameplate allows.',
    mend: 'Too little: a faster speed, a wider pipe, a cleaner filter, less bypass. Too much: more bypass, a slower speed.',
  },
  'water.bypass-range': {
    title: 'One bypass opening suits every speed and filter state',
    asks: 'There is an opening of the bypass that keeps the heater’s flow inside its band whenever it may run.',
    mend: 'Bring the heating speeds closer together, clean the filter earlier, or let a valve keep the flow by itself.',
  },
  'water.bypass-handle': {
    title: 'Bypass handle stands where it should',
    asks: 'The bypass stands inside the opening that suits every speed and filter state.',
    mend: 'Turn the handle into the range shown, prove it with a flow meter or the temperature rise, and mark it.',
  },
  'water.header-flow': {
    title: 'Flow through a 2 in header',
    asks: 'The heater’s 2 in header takes no more than 125 gpm; beyond that some water must pass outside the heater.',
    mend: 'A bypass outside the heater, or a slower speed.',
  },
  'water.temperature-rise': {
    title: 'Temperature rise across the heater',
    asks: 'At the least flow it gets, the water leaves the heater no hotter than its nameplate allows.',
    mend: 'More water through the heater: less bypass, a faster speed, a cleaner filter.',
  },
  'water.exchanger-inlet': {
    title: 'Water into the exchanger is warm enough',
    asks: 'At the start of a warm-up the water that enters the exchanger is no colder than the heater may see for long.',
    mend: 'Below it flue gas condenses inside. Ask the maker for a mixing valve or a way to start colder water.',
  },
  'water.heater-pressure': {
    title: 'Water pressure on the heater with a valve shut',
    asks: 'The pump at its greatest speed against a shut return stays under the heater’s working pressure.',
    mend: 'Limit the greatest speed, or take away whatever can shut the return behind the heater.',
  },
  'water.switch-window': {
    title: 'Water-pressure switch can be set',
    asks: 'Some setting opens with the pump off and stays made at every speed and filter state the heater runs in.',
    mend: 'Fit a true flow switch, or raise the slowest heating speed. Never bridge the switch, not even to test.',
  },
  'water.switch-setting': {
    title: 'Water-pressure switch is set right',
    asks: 'The switch closes above what the water at rest makes it see and below the least it sees running.',
    mend: 'Set it into the range shown by the maker’s instructions, then prove that it opens when the pump stops.',
  },
  'water.pipe-velocity': {
    title: 'Velocity in the pipe',
    asks: 'At the greatest flow the water is no faster than the limit for suction, or for pipes under pressure.',
    mend: 'The next size up for this run, a second one beside it, or a slower greatest speed.',
  },
  'water.filter-rate': {
    title: 'Filter is not overrun',
    asks: 'At the greatest flow the filter takes no more for each square foot than its maker allows.',
    mend: 'A slower greatest speed, or a larger filter.',
  },
  'water.filter-loading': {
    title: 'Filter is not due for cleaning',
    asks: 'The gauge, brought to the speed of its clean figure, has risen by less than the rise at which it is cleaned.',
    mend: 'Clean the filter, and note gauge and speed when it is clean.',
  },
  'water.turnover': {
    title: 'Water turned over in time',
    asks: 'At the filtration speed, the filter about to be cleaned, all the water passes it in the time asked for.',
    mend: 'A faster filtration speed, more hours a day, or a cleaner filter.',
  },
  'water.pump-suction': {
    title: 'Pump has suction to spare',
    asks: 'At the greatest flow and with the warmest water, the pump’s inlet stays clear of boiling by what it asks for.',
    mend: 'A larger suction pipe, a clean basket, a slower speed, or the pump lower and nearer.',
  },
  'water.check-valve': {
    title: 'Check valve behind the heater',
    asks: 'A check valve keeps chlorine from settling back into the heater while the pump rests.',
    mend: 'Fit one between the heater and the chemical feeder.',
  },
};
