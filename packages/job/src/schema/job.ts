import { choose, text } from './field.ts';
import { record } from './record.ts';

/** The job itself. */
export const job = record({
  collection: 'job',
  single: true,
  version: 1,
  fields: {
    name: text('What the office calls it.'),
    stage: choose(['survey', 'plan', 'install', 'start-up', 'service'], 'What the work is now.'),
    kind: choose(['new', 'swap', 'service'], 'A new heater, an old one replaced, or a call.'),
    date: text('ISO date on which the rules are asked: the day of the permit application.'),
  },
});
