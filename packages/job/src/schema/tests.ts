import { measure, text } from './field.ts';
import { record } from './record.ts';

const solution = { min: 0, max: 20 } as const;

/** What a test kit says of the water. */
export const waterTest = record({
  collection: 'waterTests',
  single: false,
  version: 1,
  fields: {
    basin: text('Basin the sample is of, by id; all that share its water when left out.'),
    ph: measure('ph', 'pH.', { min: 0, max: 14 }),
    calcium: measure('mass-concentration', 'Calcium hardness, as calcium carbonate.', solution),
    alkalinity: measure('mass-concentration', 'Total alkalinity, as calcium carbonate.', solution),
    dissolvedSolids: measure('mass-concentration', 'Total dissolved solids.', { min: 0, max: 60 }),
    cyanuricAcid: measure('mass-concentration', 'Cyanuric acid.', solution),
    freeChlorine: measure('mass-concentration', 'Free chlorine.', solution),
  },
});

/** What an analyser says of a heater’s flue gas, sampled before any air thins it. */
export const flueTest = record({
  collection: 'flueTests',
  single: false,
  version: 1,
  fields: {
    heater: text('Heater it was taken at, by id.'),
    oxygen: measure('ratio', 'Oxygen of the dry sample …', { min: 0, max: 0.21 }),
    carbonDioxide: measure('ratio', '… or its carbon dioxide.', { min: 0, max: 0.25 }),
    carbonMonoxide: measure('volume-fraction', 'Carbon monoxide as read.', { min: 0, max: 0.1 }),
    stackTemperature: measure('temperature', 'Of the flue gas at the outlet.', { min: 230, max: 1300 }),
    airTemperature: measure('temperature', 'Of the air to the burner.', { min: 230, max: 340 }),
  },
});

/** A heater fired alone and steady: the meter timed, and the water measured before and behind it. */
export const firingTest = record({
  collection: 'firingTests',
  single: false,
  version: 1,
  fields: {
    heater: text('Heater that was fired, by id.'),
    dial: measure('metered-gas-volume', 'One turn of the meter’s test dial.', { min: 1e-4, max: 10 }),
    turns: measure('ratio', 'Turns that were timed.', { min: 0.25, max: 1000, decided: true }),
    seconds: measure('time', 'They took this long, nothing else burning.', { min: 1, max: 36_000 }),
    meterPressure: measure('pressure', 'Of the gas in the meter meanwhile.', { min: 0, max: 1e6 }),
    meterTemperature: measure('temperature', 'Of the gas in the meter.', { min: 230, max: 330 }),
    waterFlow: measure('volume-flow', 'Through the heater meanwhile, by a flow meter.', {
      min: 1e-5,
      max: 0.2,
    }),
    waterIn: measure('temperature', 'Of the water before the heater.', { min: 273.15, max: 330 }),
    waterOut: measure('temperature', 'Of the water behind it.', { min: 273.15, max: 360 }),
  },
});
