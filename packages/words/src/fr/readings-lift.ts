/** How the heater is brought to its pad. */
export const READINGS_LIFT: Readonly<Record<string, string>> = {
  lifts: 'levage',
  'lifts.heater': 'chauffe-piscine soulevé',
  'lifts.by': 'à bras ou avec équipement',
  'lifts.people': 'personnes qui soulèvent',
  'lifts.reach': 'portée des mains',
  'lifts.from': 'hauteur des mains au départ',
  'lifts.to': 'hauteur des mains à l’arrivée',
  'lifts.twist': 'torsion du corps',
  'lifts.grip': 'prise',
  'lifts.ground': 'sol du camion au socle',
  'lifts.wayWidth': 'passage le plus étroit du trajet',
  'lifts.equipmentLoad': 'charge nominale de l’équipement',
};
