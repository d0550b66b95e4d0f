/** How the heater is brought to its pad. */
export const READINGS_LIFT: Readonly<Record<string, string>> = {
  lifts: 'lift',
  'lifts.heater': 'heater that is lifted',
  'lifts.by': 'hands or equipment',
  'lifts.people': 'people who lift',
  'lifts.reach': 'reach of the hands',
  'lifts.from': 'height of the hands at the start',
  'lifts.to': 'height of the hands at the end',
  'lifts.twist': 'twist of the body',
  'lifts.grip': 'grip',
  'lifts.ground': 'ground from the van to the pad',
  'lifts.wayWidth': 'narrowest passage on the way',
  'lifts.equipmentLoad': 'rated load of the equipment',
};
