/** What a heater breathes and how its flue gas leaves: fields of a spot, beside the room itself. */
import { choose, counts, measure, text, yesNo } from './field.ts';

/** Elbows of a vent. */
export const VENT_FITTINGS = ['elbow-90', 'elbow-45'] as const;

export const OPENINGS_TO = [
  'outdoors',
  'outdoors by vertical ducts',
  'outdoors by horizontal ducts',
  'other rooms',
] as const;

export const VENT_KINDS = ['type B', 'type B with single-wall connector', 'single wall', 'sealed'] as const;

export const TERMINALS = ['above the roof', 'through the wall', 'direct vent'] as const;

export const SPOT_AIR = {
  openingTo: choose(OPENINGS_TO, 'Where the two openings lead.'),
  openingLouvre: choose(
    ['none', 'metal', 'wood'],
    'Louvre over the openings, where the areas are those of the whole louvre and not free.',
  ),
  openingLowFloor: measure('length', 'From the floor to where the low opening begins.', { min: 0, max: 30 }),
  openingHighCeiling: measure('length', 'From the ceiling down to where the high opening begins.', {
    min: 0,
    max: 30,
  }),
  openingLeastSide: measure('length', 'Shortest side of the openings.', { min: 0, max: 10 }),
  joinedVolume: measure('volume', 'Of the other rooms that those openings join it with.', {
    min: 0,
    max: 1e5,
  }),
  otherInput: measure('heat-rate', 'Of the other gas burners in the same room; zero where none is.', {
    min: 0,
    max: 1e7,
  }),
  airChanges: measure('ratio', 'Air changes an hour of the room, where a test told them.', {
    min: 0.05,
    max: 50,
  }),
  mechanicalAir: measure('volume-flow', 'Outdoor air a fan blows in while the heater runs.', {
    min: 0,
    max: 50,
  }),
  ventKind: choose(VENT_KINDS, 'Sealed: for gas under pressure or that condenses, of the maker’s material.'),
  ventFittings: counts(VENT_FITTINGS, 'All elbows of the vent.'),
  commonVent: text('Name of the vent it shares with other heaters, the same with each of them.'),
  commonDiameter: measure('diameter', 'Of the shared part of the vent.', { min: 0.05, max: 2 }),
  connectorRise: measure('length', 'From the heater’s outlet up to where it joins the shared part.', {
    min: 0,
    max: 30,
  }),
  terminal: choose(TERMINALS, 'Where the vent ends.'),
  terminalHeight: measure('length', 'Underside of the terminal above the ground.', { min: 0, max: 100 }),
  terminalOverOpening: measure('length', 'Terminal above the top of that window or door.', {
    min: -100,
    max: 100,
  }),
  airInletDistance: measure('length', 'From the flue outlet, level, to the nearest inlet of a fan.', {
    min: 0,
    max: 500,
  }),
  terminalOverInlet: measure('length', 'Flue outlet above that inlet.', { min: -100, max: 100 }),
  publicWalkway: yesNo('A public walkway runs beside or under the terminal.'),
  roofPitch: measure('ratio', 'Rise over run of the roof at the vent.', { min: 0, max: 3 }),
  capOverRoof: measure('length', 'Cap of the vent above the roof, at the upper side.', { min: 0, max: 30 }),
  capWall: measure('length', 'From the cap to the nearest wall that stands higher.', { min: 0, max: 500 }),
};
