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
