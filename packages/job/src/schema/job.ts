import { choose, text, yesNo } from './field.ts';
import { record } from './record.ts';

const PERMIT_STATES = ['granted', 'asked', 'not asked', 'not needed'] as const;

/** Of a state of the United States, or of a Canadian gas technician by class. */
const GAS_LICENCES = [
  'state licence',
  'gas technician 1',
  'gas technician 2',
  'gas technician 3',
  'none',
] as const;

/** The job itself. */
export const job = record({
  collection: 'job',
  single: true,
  version: 1,
  fields: {
    name: text('What the office calls it.'),
    stage: choose(['survey', 'plan', 'install', 'start-up', 'service'], 'What the work is now.'),
    kind: choose(['new', 'swap', 'service'], 'A new heater, an old one replaced, or a call.'),
    permitGas: choose(PERMIT_STATES, 'Permit or notice for the gas work.'),
    permitElectrical: choose(PERMIT_STATES, 'Permit for the electrical work.'),
    permitBuilding: choose(PERMIT_STATES, 'Building or mechanical permit.'),
    permitBoiler: choose(PERMIT_STATES, 'Permit or notice of the boiler inspectorate.'),
    gasLicence: choose(GAS_LICENCES, 'Best licence of those who do the gas work.'),
    electricalLicence: choose(
      ['licensed', 'under a licensee', 'owner, as the law allows', 'none'],
      'Of those who do the electrical work.',
    ),
    archived: yesNo('Done with: out of the list of jobs at work.'),
    date: text('ISO date on which the rules are asked: the day of the permit application.'),
  },
});
