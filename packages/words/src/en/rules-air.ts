import type { RuleWords } from '../dictionary.ts';

const OFF = 'Keep the heater off until this is right.';

export const RULES_AIR: Readonly<Record<string, RuleWords>> = {
  'air.combustion-air': {
    title: 'Air to burn',
    asks: 'The room’s volume, its openings, or a fan give every burner in it its air.',
    mend: `${OFF} Larger openings, one that begins within 12 in of the top and one within 12 in of the bottom, or a fan that blows air in and stops the burners when it stops.`,
  },
  'air.supply-opening': {
    title: 'Opening that brings air',
    asks: 'The opening that brings air to the burners has the free area the code asks for their input.',
    mend: `${OFF} A larger opening, or a duct of at least its area.`,
  },
  'air.high-opening': {
    title: 'Opening that lets warm air out',
    asks: 'Above 400,000 Btu/h an opening high up has a tenth of the area of the one that brings air, and 10 in² at least.',
    mend: 'An opening high up, at least 12 in from the one that brings air.',
  },
  'air.opening-low': {
    title: 'Low opening near the floor',
    asks: 'The low opening begins within the distance from the floor that the code gives.',
    mend: 'Move the opening down, or bring its duct down inside the room.',
  },
  'air.opening-high': {
    title: 'High opening near the ceiling',
    asks: 'The high opening begins within the distance from the ceiling that the code gives.',
    mend: 'Move the opening up: under the ceiling the warm air gathers.',
  },
  'air.opening-side': {
    title: 'Openings not too narrow',
    asks: 'The shortest side of an air opening is at least what the code gives.',
    mend: 'An opening of the same area with a longer short side.',
  },
  'air.room-pull': {
    title: 'Fans leave the room its pressure',
    asks: 'With every fan and burner running, the room stands little enough below the pressure outdoors that no flue gas is drawn back. An estimate; a gauge across the door decides.',
    mend: `${OFF} Larger openings, a fan that blows in what the others draw out, or the exhaust fan moved elsewhere. Where anyone feels unwell: out, and call for help first.`,
  },
  'air.vent-suits': {
    title: 'Vent of the right kind',
    asks: 'Gas that condenses leaves by a sealed vent of the maker’s material; single-wall pipe serves draught hoods alone.',
    mend: `${OFF} The vent the maker’s instructions name.`,
  },
  'air.vent-carries': {
    title: 'Vent carries the flue gas',
    asks: 'The vent or connector may take at least the heater’s sea-level input.',
    mend: `${OFF} A wider or taller vent, a shorter lateral, fewer elbows, or venting of another kind that the maker allows.`,
  },
  'air.vent-stays-dry': {
    title: 'Vent stays dry',
    asks: 'The heater’s input at the site is at least what keeps a vent of this size warm enough.',
    mend: 'A narrower vent or connector that still carries the input, double wall instead of single, or less of it in the cold.',
  },
  'air.common-vent-carries': {
    title: 'Shared vent carries all its heaters',
    asks: 'The shared part of the vent may take the sea-level input of all heaters on it.',
    mend: `${OFF} A wider shared vent, or a vent of its own for one of them.`,
  },
  'air.vent-high': {
    title: 'Vent high enough to draw',
    asks: 'The vent ends at least so far above the outlet of the heater as the code gives.',
    mend: 'A taller vent.',
  },
  'air.cap-over-roof': {
    title: 'Cap clear of the roof',
    asks: 'The cap stands so far above the roof as its pitch, or a higher wall near it, asks for.',
    mend: 'A taller vent; beside a wall within 10 ft, 2 ft above the top of that as well.',
  },
  'air.flue-from-openings': {
    title: 'Flue gas away from windows and doors',
    asks: 'The flue outlet stands as far from every opening of a building as the code asks for its kind.',
    mend: 'Another spot, or a vent that carries the flue gas away. Where anyone feels unwell: out, and call for help first.',
  },
  'air.flue-from-inlet': {
    title: 'Flue gas away from air inlets',
    asks: 'The flue outlet stands far enough from, or above, every inlet through which a fan draws air into a building.',
    mend: 'Another spot, a higher terminal, or the inlet moved.',
  },
  'air.terminal-over-ground': {
    title: 'Terminal above the ground',
    asks: 'The underside of a terminal in the wall is at least so far above the ground; snow counts as ground.',
    mend: 'A higher terminal.',
  },
  'air.terminal-over-walkway': {
    title: 'Terminal above a public walkway',
    asks: 'Beside a public walkway the terminal stands above people’s heads.',
    mend: 'A higher terminal, or another wall.',
  },
  'air.no-chemicals': {
    title: 'No pool chemicals where it burns',
    asks: 'No pool chemicals are kept in the room the heater burns in: their fumes eat it, and it can light them.',
    mend: 'A store of their own for the chemicals, away from every flame.',
  },
};
