/** How the heater is brought to its pad. */
export const READINGS_LIFT: Readonly<Record<string, string>> = {
  lifts: 'levantamiento',
  'lifts.heater': 'calentador que se levanta',
  'lifts.by': 'a mano o con equipo',
  'lifts.people': 'personas que levantan',
  'lifts.reach': 'alcance de las manos',
  'lifts.from': 'altura de las manos al inicio',
  'lifts.to': 'altura de las manos al final',
  'lifts.twist': 'giro del cuerpo',
  'lifts.grip': 'agarre',
  'lifts.ground': 'suelo desde la camioneta hasta la base',
  'lifts.wayWidth': 'paso más estrecho del camino',
  'lifts.equipmentLoad': 'carga nominal del equipo',
};
