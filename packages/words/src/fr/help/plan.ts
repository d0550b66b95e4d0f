/** Of the plan, and of the lift. */
export const HELP_PLAN: Readonly<Record<string, string>> = {
  'planObjects.name': 'Comme fenêtre de la cuisine.',
  'planObjects.kind': 'Ce que c’est. Cela décide quels dégagements on lui demande.',
  'planObjects.corners':
    'Ses coins sur le plan, dans l’ordre : un pour un point, deux pour une ligne, plus pour un contour.',
  'planObjects.bottom': 'Du sol à son dessous. Vide : il est posé au sol.',
  'planObjects.top': 'Du sol à son sommet. Vide : plus haut que le chauffe-piscine.',
  'planObjects.growth': 'De combien un arbuste peut pousser, ou jusqu’où porte un arroseur.',
  'lifts.heater': 'Le chauffe-piscine qui est levé.',
  'lifts.by': 'Les mains seules, ou un appareil qui porte le poids.',
  'lifts.people': 'Combien soulèvent ensemble.',
  'lifts.reach': 'Du milieu des chevilles aux mains.',
  'lifts.from': 'Hauteur des mains au début.',
  'lifts.to': 'Hauteur des mains à la dépose.',
  'lifts.twist': 'De combien le corps tourne en le tenant.',
  'lifts.grip': 'Des poignées : bonne ; des bords pour les doigts : moyenne ; ni l’un ni l’autre : mauvaise.',
};
