import { choose, counts, measure, point, size, text, yesNo } from './field.ts';
import { record } from './record.ts';

export const GAS_FITTINGS = [
  'elbow-45',
  'elbow-90',
  'tee-run',
  'tee-branch',
  'return-bend',
  'valve',
] as const;

export const GAS_MATERIALS = ['steel-schedule-40', 'copper-tube', 'csst', 'polyethylene'] as const;

/** One section of gas pipe or tube between two junctions. */
export const gasSegment = record({
  collection: 'gasSegments',
  single: false,
  version: 1,
  fields: {
    name: text('What people call it.'),
    from: point('Junction nearer the supply; `supply` is the outlet of the meter or tank regulator.'),
    to: point('Junction farther from it.'),
    material: choose(GAS_MATERIALS, 'Pipe or tube.'),
    size: size('Nominal size; EHD for corrugated tubing.'),
    length: measure('length', 'Along the pipe, fittings not counted.', { min: 0.01, max: 5000 }),
    fittings: counts(GAS_FITTINGS, 'Fittings of this section.'),
    rise: measure('length', 'How much higher its far end stands; below zero when lower.', {
      min: -300,
      max: 300,
    }),
    where: choose(
      ['inside', 'outside', 'underground', 'under a commercial drive'],
      'Where it runs; in more than one place: the deepest.',
    ),
    cover: measure('length', 'Earth and paving over the top of it, underground.', { min: 0, max: 10 }),
    risers: yesNo('Polyethylene comes up through risers made for it, with metal above the ground.'),
    tracer: yesNo('A tracer wire lies along polyethylene and comes up at both ends.'),
    tracerSize: measure('wire-size', 'Of that wire, copper, by gauge.', {
      min: 1e-8,
      max: 1e-3,
      decided: true,
    }),
    planned: yesNo('To be laid; an existing one says no.'),
  },
});

/** A line regulator, with its own two junctions. */
export const gasRegulator = record({
  collection: 'gasRegulators',
  single: false,
  version: 1,
  fields: {
    name: text('What people call it.'),
    from: point('Junction at its inlet.'),
    to: point('Junction at its outlet.'),
    setPressure: measure('pressure', 'Outlet it is set to.', { min: 200, max: 140_000 }),
    lockUpPressure: measure('pressure', 'Outlet with no gas flowing.', { min: 200, max: 200_000 }),
    capacity: measure('standard-gas-flow', 'At the inlet pressure it has here, from its table.', {
      min: 1e-6,
      max: 10,
    }),
    droop: measure('pressure-difference', 'Fall of its outlet at that flow.', { min: 0, max: 20_000 }),
    designDrop: measure('pressure-difference', 'Drop for which the sections behind it are sized.', {
      min: 1,
      max: 70_000,
      decided: true,
    }),
  },
});

/** Any other gas appliance in the building. */
export const gasAppliance = record({
  collection: 'gasAppliances',
  single: false,
  version: 1,
  fields: {
    name: text('What it is.'),
    node: point('Junction it hangs on.'),
    input: measure('heat-rate', 'Greatest input on its nameplate.', { min: 0, max: 1e7 }),
    least: measure('pressure', 'Least inlet pressure on its nameplate.', { min: 0, max: 50_000 }),
  },
});
