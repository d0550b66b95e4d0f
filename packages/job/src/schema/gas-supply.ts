import { choose, measure, point, text, yesNo } from './field.ts';
import { GAS_TESTS } from './gas-tests.ts';
import { record } from './record.ts';

/** Where the gas comes from: service regulator and meter, or a tank with its regulators. */
export const gasSupply = record({
  collection: 'gasSupply',
  single: true,
  version: 1,
  fields: {
    fuel: choose(['natural', 'propane'], 'Which gas.'),
    heatingValue: measure('heating-value', 'Gross, from the utility’s bill or web page.', {
      min: 1e7,
      max: 2e8,
    }),
    specificGravity: measure('ratio', 'Of the gas against air.', { min: 0.35, max: 2.2 }),
    setPressure: measure('pressure', 'At the outlet of the service or second-stage regulator, flowing.', {
      min: 200,
      max: 140_000,
    }),
    lockUpPressure: measure('pressure', 'There, with no gas flowing.', { min: 200, max: 200_000 }),
    regulatorCapacity: measure(
      'standard-gas-flow',
      'Flow at which the regulator still holds its set pressure.',
      {
        min: 1e-6,
        max: 10,
      },
    ),
    regulatorDroop: measure('pressure-difference', 'Fall of its outlet at that flow.', {
      min: 0,
      max: 20_000,
    }),
    meterBadge: measure('standard-gas-flow', 'Capacity on the meter’s badge.', { min: 1e-5, max: 10 }),
    meterBadgeDrop: measure(
      'pressure-difference',
      'Pressure lost in the meter at that flow; 0.5 in w.c. for most.',
      {
        min: 0,
        max: 2000,
      },
    ),
    meterCompensated: yesNo('The index already counts standard volume.'),
    designDrop: measure(
      'pressure-difference',
      'Drop for which the sections are sized by the code’s method.',
      {
        min: 1,
        max: 70_000,
      },
    ),
    existingLoad: measure('heat-rate', 'All other appliances as one lump, for a first estimate.', {
      min: 0,
      max: 1e7,
      decided: true,
    }),
    existingLoadAt: point('Junction that lump hangs on; the end of the first section when left out.'),
    tankDiameter: measure('length', 'Of a propane tank.', { min: 0.2, max: 4 }),
    tankLength: measure('length', 'Of a propane tank.', { min: 0.3, max: 20 }),
    tankFill: measure('ratio', 'Least fill before it is refilled.', { min: 0.05, max: 0.85 }),
    ...GAS_TESTS,
    price: measure('price-per-energy', 'What the fuel costs, from the last bill.', { min: 0, max: 1e-6 }),
    note: text('Anything else.'),
  },
});
