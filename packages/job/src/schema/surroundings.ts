import { choose, measure, text, yesNo } from './field.ts';
import { record } from './record.ts';
import { SPOT_AIR } from './spot-air.ts';

/** Where the heater stands and what is around it: readings of the lines air and place. */
export const spot = record({
  collection: 'spots',
  single: false,
  version: 1,
  fields: {
    heater: text('Heater that stands there, by id.'),
    where: choose(['outdoors', 'shed', 'room'], 'Under the sky, in a shed, in an equipment room.'),
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
    pad: choose(['concrete', 'pavers', 'none', 'noncombustible floor'], 'What it stands on.'),
    chemicalsStored: yesNo('Pool chemicals kept in the same room.'),
  },
});
