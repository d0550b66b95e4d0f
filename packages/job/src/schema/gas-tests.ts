/** Test, purge and bonding of the gas piping: fields of the supply. */
import { choose, measure, yesNo } from './field.ts';

const METRES = { min: 0, max: 500 } as const;

export const GAS_TESTS = {
  testPressure: measure('pressure', 'Of the pressure test.', { min: 0, max: 2e6, decided: true }),
  testDuration: measure('time', 'Of the pressure test.', { min: 0, max: 1e6, decided: true }),
  testGaugeRange: measure('pressure', 'Full scale of its gauge.', { min: 0, max: 1e7 }),
  testGas: choose(
    ['air', 'nitrogen', 'carbon dioxide', 'other inert gas', 'fuel gas', 'oxygen'],
    'What it is made with.',
  ),
  leaks: yesNo('Soap or a detector found a leak once gas was on.'),
  csstBonded: yesNo('Its corrugated tubing is bonded to the building’s ground.'),
  csstBondConductor: measure('wire-size', 'Conductor of that bond, copper, by gauge.', {
    min: 1e-7,
    max: 1e-3,
    decided: true,
  }),
  csstBondLength: measure('length', 'Length of that conductor.', METRES),
  purgeWay: choose(
    ['outdoors', 'through a burner', 'indoors, watched by a detector', 'indoors, unwatched'],
    'Where the air in new piping goes.',
  ),
  purgeInert: yesNo('An inert gas drives the air out first.'),
  purgeIgnition: measure('length', 'From where it is let out to the nearest source of ignition.', METRES),
  purgeOpenings: measure('length', 'From there to the nearest opening of a building.', METRES),
  purgeIntake: measure('length', 'From there to the nearest inlet of a fan.', METRES),
  purgeGas: measure('volume-fraction', 'Share of fuel gas there when it is ended.', {
    min: 0,
    max: 1,
    decided: true,
  }),
} as const;
