import { catalog } from '@firstfire/reference';
import { choose, measure, text, yesNo } from './field.ts';
import { record } from './record.ts';

/** Voltages a heater’s control transformer has a tap for. */
export const TAPS = ['120', '208', '240'] as const;

/** Temperatures that insulation and terminals are rated for, °C. */
const RATINGS = ['60', '75', '90'] as const;

/** The electrical circuit of the heater and its control wiring: readings of the line power. */
export const circuit = record({
  collection: 'circuits',
  single: false,
  version: 1,
  fields: {
    heater: text('Heater it feeds, by id.'),
    phases: choose(['1', '3'], 'Of the supply at the heater; a single phase unless said.'),
    selector: choose(TAPS, 'Where the heater’s voltage selector stands.'),

    voltsIdle: measure('voltage', 'At the heater, pump and heater off.', { min: 0, max: 700 }),
    voltsRunning: measure('voltage', 'There, with both running.', { min: 0, max: 700 }),
    runningCurrent: measure('current', 'Of both together then, by clamp meter.', { min: 0, max: 1000 }),
    startCurrent: measure('current', 'Of both together as the pump starts.', { min: 0, max: 2000 }),
    controlVolts: measure('voltage', 'At the secondary of the control transformer.', { min: 0, max: 700 }),

    breaker: measure('current', 'Rating of the breaker.', { min: 0, max: 400, decided: true }),
    otherLoad: measure('current', 'Of everything else behind the same breaker.', { min: 0, max: 400 }),
    metal: choose(['copper', 'aluminium'], 'Of the conductors.'),
    conductor: measure('wire-size', 'Copper, by gauge.', { min: 1e-7, max: 1e-3, decided: true }),
    insulation: choose(RATINGS, 'Rating of the conductors’ insulation, °C.'),
    terminals: choose(RATINGS, 'Rating of the terminals at both ends, °C.'),
    ambient: measure('temperature', 'Hottest air around the conductors.', { min: 233, max: 363 }),
    inRaceway: measure('ratio', 'Conductors that carry current in the same raceway.', {
      min: 1,
      max: 100,
      decided: true,
    }),
    length: measure('length', 'From panel to heater.', { min: 0.1, max: 1000 }),
    equipmentGround: measure('wire-size', 'Equipment ground, copper, by gauge.', {
      min: 1e-7,
      max: 1e-3,
      decided: true,
    }),
    connection: choose(['fixed wiring', 'cord and plug', 'extension cord'], 'How it is connected.'),

    gfci: yesNo('Protected by a ground-fault interrupter.'),
    disconnectInSight: yesNo('A disconnect in sight of the heater.'),
    disconnectDistance: measure('length', 'From the disconnect to the inside wall of the pool.', {
      min: 0,
      max: 500,
    }),
    barrier: yesNo('A fence, wall or other permanent barrier between the pool and heater and disconnect.'),

    bonded: yesNo('Its lug is bonded to the pool’s grid.'),
    bondConductor: measure('wire-size', 'Bonding conductor, copper, by gauge.', {
      min: 1e-7,
      max: 1e-3,
      decided: true,
    }),
    bondStrands: choose(['solid', 'stranded'], 'Of the bonding conductor.'),

    burialMethod: choose(['not buried', ...catalog.power.BURIAL_METHODS], 'How its wiring is buried.'),
    burialPlace: choose(catalog.power.BURIAL_PLACES, 'What lies above it.'),
    cover: measure('length', 'Earth and paving over the top of it.', { min: 0, max: 10 }),
    burialFromPool: measure(
      'length',
      'From the buried wiring to the inside wall of the pool; zero under it.',
      {
        min: 0,
        max: 500,
      },
    ),

    controlRoute: choose(
      ['none', 'own raceway', 'behind a barrier', 'own cable', 'with power'],
      'How low-voltage wiring from outside reaches the heater.',
    ),
    controlSpacing: measure('length', 'Between a low-voltage cable and power wiring.', { min: 0, max: 10 }),
    remote: choose(['none', 'two-wire', 'three-wire', 'serial'], 'Who calls for heat from elsewhere.'),
    remoteDistance: measure('length', 'From the remote control to the inside wall of the pool.', {
      min: 0,
      max: 500,
    }),
    localLimit: yesNo('The heater’s own thermostat is set, and nothing called from elsewhere passes it.'),
    interlocked: yesNo('The heater has power or a call only while its pump is on.'),
    runOn: measure('time', 'The pump runs on this long after the burner is shut off.', {
      min: 0,
      max: 36_000,
      decided: true,
    }),
  },
});

/** What bonds the pool as a whole. */
export const bonding = record({
  collection: 'bonding',
  single: true,
  version: 1,
  fields: {
    perimeter: choose(
      ['existing', 'shell steel', 'copper grid', 'copper ring', 'none'],
      'What bonds the ground around the pool; existing where no ground is opened for this job.',
    ),
    points: measure('ratio', 'Places at which it is connected to steel or grid, spread evenly.', {
      min: 0,
      max: 100,
      decided: true,
    }),
    width: measure('length', 'How far it reaches out from the inside wall.', { min: 0, max: 30 }),
    gridPitch: measure('length', 'Between the wires of a copper grid.', { min: 0.01, max: 5 }),
    ringDistance: measure('length', 'From a copper ring to the inside wall.', { min: 0, max: 30 }),
    ringDepth: measure('length', 'Of a copper ring below the subgrade.', { min: 0, max: 5 }),
    waterContact: measure('area', 'Of bonded metal that touches the water once the work is done.', {
      min: 0,
      max: 100,
    }),
    tingle: yesNo('Somebody felt a tingle in or near the water.'),
  },
});
