import { choose, counts, curve, measure, text, yesNo } from './field.ts';
import { record } from './record.ts';
import { SPOT_AIR } from './spot-air.ts';

/** Things of which it is worth knowing that there are none. */
export const NEAR = ['air conditioner', 'regulator vent', 'electrical'] as const;

/** Where the heater stands and what is around it: readings of the lines air and place. */
export const spot = record({
  collection: 'spots',
  single: false,
  version: 1,
  fields: {
    heater: text('Heater that stands there, by id.'),
    where: choose(['outdoors', 'shed', 'room', 'garage'], 'Under the sky, in a shed, in an equipment room.'),
    roomLength: measure('length', 'Of the room or shed.', { min: 0.3, max: 100 }),
    roomWidth: measure('length', 'Of the room or shed.', { min: 0.3, max: 100 }),
    roomHeight: measure('length', 'Of the room or shed.', { min: 0.3, max: 30 }),
    openingLow: measure('area', 'Free area of the opening near the floor.', { min: 0, max: 50 }),
    openingHigh: measure('area', 'Free area of the opening near the ceiling.', { min: 0, max: 50 }),
    exhaustFan: measure('volume-flow', 'Fans that draw air out of the same room.', { min: 0, max: 50 }),
    ventDiameter: measure('diameter', 'Of the vent.', { min: 0.05, max: 2 }),
    ventHeight: measure('length', 'From the heater’s outlet to the terminal.', { min: 0, max: 100 }),
    ventLateral: measure('length', 'Horizontal part of the vent.', { min: 0, max: 100 }),
    ...SPOT_AIR,
    clearanceLeft: measure('length', 'To the nearest thing.', { min: 0, max: 100 }),
    clearanceRight: measure('length', 'To the nearest thing.', { min: 0, max: 100 }),
    clearanceBack: measure('length', 'To the nearest thing.', { min: 0, max: 100 }),
    clearanceFront: measure('length', 'To the nearest thing.', { min: 0, max: 100 }),
    clearanceAbove: measure('length', 'To an overhang or ceiling.', { min: 0, max: 100 }),
    openingDistance: measure('length', 'From the flue outlet to the nearest window or door.', {
      min: 0,
      max: 100,
    }),
    propertyLine: measure('length', 'To the property line.', { min: 0, max: 500 }),
    waterEdge: measure('length', 'To the water’s edge.', { min: 0, max: 500 }),
    ownEnclosure: yesNo('Indoors: a room or enclosure of its own.'),
    wallMounting: choose(['not on a wall', 'fastened', 'loose'], 'Whether it hangs on a wall, and how.'),
    pad: choose(['concrete', 'pavers', 'none', 'noncombustible floor'], 'What it stands on.'),
    padHeight: measure('length', 'Foot of the heater above the ground or floor around it.', {
      min: -1,
      max: 10,
    }),
    near: counts(NEAR, 'What stands within 10 ft (3 m), each counted; zero says that somebody looked.'),
    airConditionerDistance: measure('length', 'To the nearest outdoor air-conditioning unit.', {
      min: 0,
      max: 100,
    }),
    regulatorVentDistance: measure('length', 'To the vent of a gas regulator.', { min: 0, max: 100 }),
    electricalDistance: measure('length', 'To the front of the nearest electrical panel or disconnect.', {
      min: 0,
      max: 100,
    }),
    tankDistance: measure('length', 'To the relief valve of the propane tank.', { min: 0, max: 500 }),
    underStructure: yesNo('A deck, a porch or another structure over it; the eaves of a roof are none.'),
    setback: measure('length', 'From the property line, as the zoning asks; zero where it asks none.', {
      min: 0,
      max: 100,
      decided: true,
    }),
    floodLevel: measure('length', 'Design flood level above the ground there; below zero: under it.', {
      min: -1000,
      max: 30,
    }),
    snowDepth: measure('length', 'Deepest snow that lies there while it is used.', { min: 0, max: 10 }),
    anchorage: choose(['none', 'listed', 'engineered'], 'What holds it to its pad.'),
    hotSurfacesGuarded: yesNo('By its place or by a guard nobody touches what gets hot.'),
    sprinkler: yesNo('A lawn sprinkler wets it.'),
    planX: measure('length', 'Middle of the heater on the plan, to the right.', { min: -1000, max: 1000 }),
    planY: measure('length', 'Middle of the heater on the plan, up the page.', { min: -1000, max: 1000 }),
    turn: measure('angle', 'On the plan, anticlockwise; unturned its front looks down the page.', {
      min: -10,
      max: 10,
    }),
    chemicalsStored: yesNo('Pool chemicals kept in the same room.'),
  },
});

/** What may stand on a plan. */
export const PLAN_KINDS = [
  'property line',
  'building',
  'wall',
  'fence',
  'shrub',
  'overhang',
  'deck',
  'opening',
  'pool',
  'walkway',
  'sprinkler',
  'air conditioner',
  'regulator vent',
  'electrical',
  'propane tank',
  'pump',
] as const;

/** One thing on the plan of the yard, everything within 10 ft (3 m) of the heater among them. */
export const planObject = record({
  collection: 'planObjects',
  single: false,
  version: 1,
  fields: {
    name: text('What people call it.'),
    kind: choose(PLAN_KINDS, 'What it is.'),
    corners: curve(
      { x: 'length', y: 'length', trend: 'rises' },
      'Its corners on the plan in order, right and up: one of a point, two or more of a line.',
    ),
    bottom: measure('length', 'Underside above the ground; it stands on the ground unless said.', {
      min: -10,
      max: 100,
    }),
    top: measure('length', 'Top above the ground; higher than the heater unless said.', {
      min: -10,
      max: 200,
    }),
    growth: measure('length', 'How far a shrub may grow outwards, or a sprinkler reach.', {
      min: 0,
      max: 20,
    }),
  },
});
