import { choose, measure, text } from './field.ts';
import { record } from './record.ts';

/** The hardest lift of a heater on its way from the van to its pad. */
export const lift = record({
  collection: 'lifts',
  single: false,
  version: 1,
  fields: {
    heater: text('Heater that is lifted, by id.'),
    by: choose(['people', 'equipment'], 'Hands alone, or a cart, hoist or crane that bears the weight.'),
    people: choose(['1', '2', '3', '4'], 'How many lift together.'),
    reach: measure('length', 'Hands from the middle between the ankles.', { min: 0, max: 2 }),
    from: measure('length', 'Height of the hands at the start.', { min: 0, max: 3 }),
    to: measure('length', 'Height of the hands at the end.', { min: 0, max: 3 }),
    twist: measure('angle', 'Turn of the body while it is held.', { min: 0, max: 4 }),
    ground: choose(['firm', 'soft', 'steps'], 'What they walk on with it, from the van to the pad.'),
    wayWidth: measure('length', 'Narrowest gate or passage on the way.', { min: 0.1, max: 50 }),
    equipmentLoad: measure('mass', 'Rated load of the cart, hoist or crane.', { min: 1, max: 20_000 }),
    grip: choose(['good', 'fair', 'poor'], 'Handles; edges that fit the fingers; neither.'),
  },
});
