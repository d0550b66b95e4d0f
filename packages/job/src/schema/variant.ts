import { substitute, text } from './field.ts';
import { record } from './record.ts';

/** A named variant of the plan: the same job with some readings replaced. */
export const variant = record({
  collection: 'variants',
  single: false,
  version: 1,
  fields: {
    name: text('What people call it.'),
    note: text('Why it is there.'),
  },
});

/** One reading that a variant replaces, or a new one on a thing that only the variant has. */
export const variantChange = record({
  collection: 'variantChanges',
  single: false,
  version: 1,
  fields: {
    variant: text('Id of the variant.'),
    target: text('Which reading: collection/id/field, such as gasSegments/s3/size.'),
    reading: substitute('What stands there in the variant.'),
  },
});
