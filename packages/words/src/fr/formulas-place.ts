/** Titles of the steps of the place line. */
export const FORMULAS_PLACE: Readonly<Record<string, string>> = {
  'place.usual-clearance': 'Dégagement usuel à l’extérieur',
  'place.drawn': 'Pris sur le plan',
  'place.sound-at-distance': 'Bruit à une distance',
  'place.wind-pressure': 'Pression du vent',
  'place.standing-share': 'Ce qui le retient sur ce par quoi le vent le renverse',
};
