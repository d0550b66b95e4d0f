/** Titles of the steps of the place line. */
export const FORMULAS_PLACE: Readonly<Record<string, string>> = {
  'place.usual-clearance': 'Usual clearance outdoors',
  'place.drawn': 'Taken from the plan',
  'place.sound-at-distance': 'Sound at a distance',
  'place.wind-pressure': 'Pressure of the wind',
  'place.standing-share': 'What holds it down over what the wind tips it with',
};
