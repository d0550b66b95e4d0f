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

export const VENT_KINDS = [
  'type B',
  'type B with single-wall connector',
  'single wall',
  'corrugated liner',
  'masonry chimney',
  'sealed',
] as const;

/** What a sealed vent may be made of. */
export const VENT_MATERIALS = [
  'stainless steel',
  'polypropylene',
  'CPVC',
  'PVC',
  'aluminium',
  'galvanised steel',
] as const;

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
  openingScreen: measure('length', 'Mesh of the screen over the openings; zero where there is none.', {
    min: 0,
    max: 1,
  }),
  intakeHeight: measure('length', 'Lowest side of the air intake outdoors above the ground there.', {
    min: -10,
    max: 100,
  }),
  ductAlone: yesNo('Each air duct serves this room alone, and one opening of it.'),
  ductRises: yesNo('A level duct of the high opening does not slope down towards outdoors.'),
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
  dryerAir: measure('volume-flow', 'Clothes dryers in the room draw this; none unless said.', {
    min: 0,
    max: 5,
  }),
  hoodAir: measure('volume-flow', 'Range hoods in the room or open to it draw this; none unless said.', {
    min: 0,
    max: 10,
  }),
  supplyInterlock: yesNo('The burners stop when the fan that blows air in stops.'),
  ventKind: choose(VENT_KINDS, 'Sealed: for gas under pressure or that condenses, of the maker’s material.'),
  ventFittings: counts(VENT_FITTINGS, 'All elbows of the vent.'),
  ventMaterial: choose(VENT_MATERIALS, 'Of a sealed vent.'),
  ventListed: yesNo('The sealed vent is listed for the category and is one that the instructions name.'),
  ventSlope: measure('ratio', 'Rise over run of its horizontal parts; of a condensing heater back to it.', {
    min: 0,
    max: 1,
  }),
  singleWallCold: yesNo('A single-wall part runs outdoors, through an attic or an unheated space.'),
  chimneyArea: measure('area', 'Inside a masonry chimney’s tile or liner.', { min: 0, max: 4 }),
  condensateDrain: choose(
    ['none', 'by gravity', 'pump'],
    'How the condensate of heater and vent leaves; a trap before either.',
  ),
  condensateNeutral: yesNo('A neutraliser, or a drain that bears acid all the way to a public sewer.'),
  condensateFrost: yesNo('Trap and drain keep from freezing, or stand drained in the cold.'),
  condensateCapacity: measure('volume-flow', 'Of the smallest of pump, neutraliser and drain.', {
    min: 0,
    max: 0.01,
  }),
  commonVent: text('Name of the vent it shares with other heaters, the same with each of them.'),
  commonDiameter: measure('diameter', 'Of the shared part of the vent.', { min: 0.05, max: 2 }),
  commonFittings: counts(VENT_FITTINGS, 'Elbows of the shared part; none unless said.'),
  commonManifold: yesNo('Connectors join in a level manifold before the shared part.'),
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
  terminalSoffit: measure('length', 'From the terminal up to a soffit or overhang over it.', {
    min: 0,
    max: 100,
  }),
  terminalDeck: choose(['none', 'open on two sides', 'closed in'], 'A deck over the terminal.'),
  terminalDeckGap: measure('length', 'From the terminal up to the underside of that deck.', {
    min: 0,
    max: 30,
  }),
  adjacentOpening: measure('length', 'From the terminal, level, to an opening of a building next door.', {
    min: 0,
    max: 500,
  }),
  roofPitch: measure('ratio', 'Rise over run of the roof at the vent.', { min: 0, max: 3 }),
  capOverRoof: measure('length', 'Cap of the vent above the roof, at the upper side.', { min: 0, max: 30 }),
  capWall: measure('length', 'From the cap to the nearest wall that stands higher.', { min: 0, max: 500 }),
};
