export const FORMULAS_PLACE: Readonly<Record<string, string>> = {
  'place.usual-clearance': 'Espacio libre usual en exterior',
  'place.drawn': 'Tomado del plano',
  'place.sound-at-distance': 'Sonido a una distancia',
  'place.wind-pressure': 'Presión del viento',
  'place.standing-share': 'Lo que lo sujeta sobre lo que el viento hace para volcarlo',
};
