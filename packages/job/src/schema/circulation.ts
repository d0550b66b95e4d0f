import { choose, counts, curve, measure, size, text, yesNo } from './field.ts';
import { record } from './record.ts';

export const WATER_FITTINGS = [
  'elbow-90',
  'elbow-45',
  'sweep-90',
  'tee-run',
  'tee-branch',
  'union',
  'valve',
  'check-valve',
  'entrance',
  'exit',
] as const;

export const WATER_MATERIALS = ['pvc-40', 'pvc-80', 'cpvc-40', 'cpvc-80', 'copper-L'] as const;

/** The circulation pump. */
export const pump = record({
  collection: 'pumps',
  single: false,
  version: 1,
  fields: {
    name: text('What people call it.'),
    curve: curve({ x: 'volume-flow', y: 'head', trend: 'falls' }, 'Head against flow at full speed.'),
    speedFull: measure('frequency', 'Speed the curve is for.', { min: 1, max: 200 }),
    efficiency: measure('ratio', 'Wire to water at its best point.', { min: 0.05, max: 0.95 }),
    suctionHead: measure('head', 'Suction head it asks for at its greatest flow (NPSH required).', {
      min: 0,
      max: 20,
    }),
  },
});

/** A speed at which the pump runs. */
export const pumpSpeed = record({
  collection: 'pumpSpeeds',
  single: false,
  version: 1,
  fields: {
    name: text('What it is for.'),
    speed: measure('frequency', 'Of the motor.', { min: 1, max: 200, decided: true }),
    heating: yesNo('The heater may run at this speed.'),
    basins: text('Basins it turns over, by id, separated by spaces; any of them when left out.'),
  },
});

/** The filter. */
export const filter = record({
  collection: 'filters',
  single: false,
  version: 1,
  fields: {
    name: text('What people call it.'),
    kind: choose(['sand', 'cartridge', 'diatomaceous'], 'What it filters with.'),
    area: measure('area', 'Filter area.', { min: 0.01, max: 100 }),
    cleanLoss: measure('pressure-difference', 'Pressure lost in it when clean …', { min: 0, max: 300_000 }),
    cleanFlow: measure('volume-flow', '… at this flow.', { min: 1e-5, max: 0.2 }),
    cleanSpeed: measure('frequency', 'Motor speed at which the clean figure was read.', { min: 1, max: 200 }),
    dirtyRise: measure('pressure-difference', 'Rise over clean at which it is cleaned.', {
      min: 0,
      max: 300_000,
    }),
    gaugeClean: measure('pressure', 'Gauge before it when clean, at the speed of the clean figure.', {
      min: -100_000,
      max: 500_000,
    }),
    gaugeNow: measure('pressure', 'Gauge before it as found …', { min: -100_000, max: 500_000 }),
    speedNow: measure('frequency', '… at this motor speed.', { min: 1, max: 200 }),
    rateGreatest: measure('velocity', 'Greatest flow per area.', { min: 1e-5, max: 0.1 }),
  },
});

/** A run of water pipe. */
export const waterRun = record({
  collection: 'waterRuns',
  single: false,
  version: 1,
  fields: {
    name: text('What people call it.'),
    role: choose(
      [
        'suction',
        'pump-to-filter',
        'filter-to-heater',
        'supply-header',
        'heater-branch',
        'return-header',
        'bypass',
        'return',
      ],
      'Its place in the loop; runs of one place follow each other, headers from the first heater on.',
    ),
    basin: text('Basin it comes from or goes to, by id, for suction and return.'),
    heater: text('Heater it serves, by id, for a branch.'),
    material: choose(WATER_MATERIALS, 'Pipe.'),
    size: size('Nominal size.'),
    length: measure('length', 'Along the pipe, fittings not counted.', { min: 0.01, max: 5000 }),
    fittings: counts(WATER_FITTINGS, 'Fittings of this run.'),
  },
});

/** Valves, manifold and levels of the loop. */
export const waterLoop = record({
  collection: 'waterLoop',
  single: true,
  version: 1,
  fields: {
    bypass: choose(['none', 'manual'], 'Whether water can pass beside the heater.'),
    bypassCv: measure('flow-coefficient', 'Flow coefficient of the bypass valve wide open.', {
      min: 0,
      max: 1,
    }),
    bypassOpening: measure('ratio', 'Where its handle stands, 0 closed, 1 open.', { min: 0, max: 1 }),
    bypassCharacter: choose(
      ['linear', 'equal-percentage', 'ball', 'butterfly'],
      'How flow follows its handle.',
    ),
    manifold: choose(['direct', 'reverse'], 'Return of several heaters.'),
    checkValve: yesNo('A check valve after the heater, before the chemical feeder.'),
    feeder: choose(
      ['none', 'behind heater and check valve', 'behind the heater', 'before the heater'],
      'Where a chemical feeder joins the loop.',
    ),
    timer: choose(
      ['yes', 'no', 'health rules run it all day'],
      'Heater and pump are turned on and off by a preset schedule.',
    ),
    solarPipe: measure('length', 'Free pipe between filter and heater, or as good as.', { min: 0, max: 100 }),
    flowFound: measure('volume-flow', 'Flow through the old heater as found, at the speed it heats at.', {
      min: 1e-5,
      max: 0.2,
    }),
    flowShare: measure('ratio', 'Flow with the new heater over the flow with the old one.', {
      min: 0.1,
      max: 2,
    }),
    spillwayHeight: measure('length', 'Fall of the water from spa to pool.', { min: 0, max: 10 }),
    pumpAbovePool: measure('length', 'Pump above the pool surface; below zero when lower.', {
      min: -30,
      max: 10,
    }),
    waterTemperature: measure('temperature', 'Of the water when the readings were taken.', {
      min: 273.15,
      max: 330,
    }),
    electricityPrice: measure('price-per-energy', 'Per energy.', { min: 0, max: 1e-5 }),
  },
});
