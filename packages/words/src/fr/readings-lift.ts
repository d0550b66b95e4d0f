/** How the heater is brought to its pad. */
export const READINGS_LIFT: Readonly<Record<string, string>> = {
  lifts: 'levage',
  'lifts.heater': 'chauffe-piscine levé',
  'lifts.by': 'bras ou équipement',
  'lifts.people': 'personnes qui lèvent',
  'lifts.reach': 'distance des mains',
  'lifts.from': 'hauteur des mains au départ',
  'lifts.to': 'hauteur des mains à l’arrivée',
  'lifts.twist': 'torsion du corps',
  'lifts.grip': 'prise',
};
