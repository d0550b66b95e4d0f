import type { RuleWords } from '../dictionary.ts';

const PEOPLE_FIRST = 'Where anyone feels unwell near it: off, out, and call for help first.';

export const RULES_PLACE: Readonly<Record<string, RuleWords>> = {
  'place.clearance': {
    title: 'Clearance on the nameplate',
    asks: 'Straight out from this face nothing stands nearer than nameplate or instructions allow.',
    mend: 'Move the heater, turn it, or take away what stands too near; nothing that burns stays there meanwhile.',
  },
  'place.usual-clearance': {
    title: 'Usual clearance outdoors',
    asks: 'Until someone reads the nameplate: what the trade keeps free before this face of an outdoor heater.',
    mend: 'Read the clearances on the nameplate; they come first. Else move or turn the heater.',
  },
  'place.unlisted-clearance': {
    title: 'Clearance of an unlisted heater',
    asks: 'A pool heater without a listing keeps 12 in free at its sides and rear.',
    mend: 'A listed heater, or more room. Ask the authority before an unlisted one is set.',
  },
  'place.service-room': {
    title: 'Room to service it',
    asks: 'Level room of 30 in by 30 in is free before the side it is serviced from.',
    mend: 'Turn the service side to where there is room, or move the heater.',
  },
  'place.not-under-deck': {
    title: 'Under no deck',
    asks: 'No deck, porch or other structure stands over an outdoor heater: flue gas gathers under it.',
    mend: `Keep it off until it stands in the open, or is vented as its maker says. ${PEOPLE_FIRST}`,
  },
  'place.property-line': {
    title: 'Distance to the property line',
    asks: 'An outdoor pool heater stands as far from every property line as the gas code asks.',
    mend: 'Another spot farther from the line.',
  },
  'place.setback': {
    title: 'Setback of the zoning',
    asks: 'The heater stands behind the setback that the zoning at the address asks of equipment.',
    mend: 'Another spot, or a variance from the authority, in writing, before the pad is poured.',
  },
  'place.air-conditioner': {
    title: 'Distance to the air-conditioning unit',
    asks: 'Heater and outdoor air-conditioning unit stand so far apart that neither breathes what the other blows out.',
    mend: 'Another spot, or the front turned away from the unit.',
  },
  'place.regulator-vent': {
    title: 'Distance to a gas regulator’s vent',
    asks: 'No flame stands where a gas regulator may breathe out gas.',
    mend: 'Another spot, or the vent piped away by a licensed gas fitter. Until then do not light it.',
  },
  'place.electrical-space': {
    title: 'Working space of electrical equipment',
    asks: 'The heater stays out of the working space before panels and disconnects.',
    mend: 'Another spot; the space before electrical equipment is for who works on it.',
  },
  'place.water-edge': {
    title: 'Distance to the water’s edge',
    asks: 'Nobody in the water can reach the heater.',
    mend: 'Another spot, or a barrier that cannot be reached over; ask what the electrical code adds.',
  },
  'place.propane-tank': {
    title: 'Distance to the propane tank’s relief valve',
    asks: 'No flame stands where the relief valve of the tank may blow off.',
    mend: 'Another spot, or another place for the tank by a licensed propane fitter. Until then do not light it.',
  },
  'place.pad': {
    title: 'Pad',
    asks: 'It stands on a level pad that cannot burn.',
    mend: 'A concrete slab or pavers on a bed that does not settle.',
  },
  'place.base-height': {
    title: 'Foot above the ground',
    asks: 'On the ground it stands on a level base that is 3 in or more above the ground around it.',
    mend: 'A higher base. The header rises with it: look at the water switch again.',
  },
  'place.ignition-height': {
    title: 'Flame above the garage floor',
    asks: 'In a garage the flame is 18 in or more above the floor, where fuel vapour lies.',
    mend: 'A stand, or another spot. Keep it off until then.',
  },
  'place.above-flood': {
    title: 'Above the design flood',
    asks: 'Its foot is at or above the flood level that the address is designed for.',
    mend: 'A higher stand; the header rises with it, so look at water switch, gas and reach again. Controls that have been under water are replaced, never dried.',
  },
  'place.above-snow': {
    title: 'Above the snow',
    asks: 'The top of the heater, where flue gas leaves, is a foot or more above the deepest snow while it is used.',
    mend: 'A stand or a roof its maker allows, or keep it off until the snow is cleared from around it.',
  },
  'place.stands-in-wind': {
    title: 'Stands in the design wind',
    asks: 'By its own weight it stays up in the design wind, or a listed or engineered anchorage holds it.',
    mend: 'A listed or engineered anchorage; where hurricanes are known the code asks for it by name.',
  },
  'place.hot-surfaces': {
    title: 'Hot surfaces out of reach',
    asks: 'By its place or by a guard nobody touches what gets hot.',
    mend: 'A guard that leaves air and service their room.',
  },
  'place.sprinkler': {
    title: 'Out of the sprinklers',
    asks: 'No lawn sprinkler wets the heater.',
    mend: 'Move or turn the sprinkler head.',
  },
  'place.walkway': {
    title: 'Walkway left free',
    asks: 'On the plan the heater stands on no walkway.',
    mend: 'Another spot, or another way for people.',
  },
  'place.connections-face': {
    title: 'Water connections face the pump',
    asks: 'On the plan the side with the water pipes does not look away from the pump.',
    mend: 'Turn the heater, or move its header across where its maker allows that.',
  },
  'place.noise': {
    title: 'Sound at the property line',
    asks: 'In the open the sound of the nameplate is no louder at the property line than the place allows.',
    mend: 'Farther from the line, a wall between, or other hours. Walls beside the heater make it up to 6 dB louder than this.',
  },
};
