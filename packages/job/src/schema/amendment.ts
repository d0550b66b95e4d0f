import { text, yesNo } from './field.ts';
import { record } from './record.ts';

/** What the place asks in the stead of a rule’s own figure, as somebody read it in a local amendment. */
export const amendment = record({
  collection: 'amendments',
  single: false,
  version: 1,
  fields: {
    rule: text('Id of the rule, such as gas.burial-depth.'),
    asked: yesNo('No where the place does not ask it at all; yes unless said.'),
    required: text('The figure with its unit, such as 18 in; of a band both, such as 7.2 to 7.8.'),
    citation: text('The ordinance and its section.'),
  },
});
