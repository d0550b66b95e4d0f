import type { RuleWords } from '../dictionary.ts';

const ELECTRICIAN = 'Travail d’électricien licencié.';

/** What holds everything around the water at one potential. */
export const RULES_POWER_BONDING: Readonly<Record<string, RuleWords>> = {
  'power.no-tingle': {
    title: 'Personne ne ressent de picotement',
    asks: 'Personne n’a ressenti de picotement dans l’eau, sur la plage, ni à quoi que ce soit de métal à cet endroit.',
    mend: 'Tout le monde hors de l’eau et de la plage mouillée, sans toucher de métal ; puis couper le courant au panneau, et appeler un électricien licencié et le distributeur. Personne n’y retourne avant que la cause soit trouvée.',
  },
  'power.bonded': {
    title: 'Chauffe-piscine relié à la grille de la piscine',
    asks: 'La borne du chauffe-piscine est reliée à ce qui lie la piscine au même potentiel.',
    mend: `Le relier avant que quiconque soit dans l’eau. ${ELECTRICIAN}`,
  },
  'power.bond-size': {
    title: 'Conducteur de liaison équipotentielle assez gros',
    asks: 'Le conducteur de liaison en cuivre a le calibre que demande le code ; nu, recouvert ou isolé.',
    mend: `En poser un plus gros. ${ELECTRICIAN}`,
  },
  'power.bond-solid': {
    title: 'Conducteur de liaison plein',
    asks: 'Le conducteur de liaison est en cuivre plein.',
    mend: `En poser un plein. ${ELECTRICIAN}`,
  },
  'power.water-bond': {
    title: 'Eau de la piscine reliée',
    asks: 'Les travaux finis, 9 po² ou plus de métal relié touchent encore l’eau.',
    mend: `Poser dans la tuyauterie une pièce de liaison de l’eau. ${ELECTRICIAN}`,
  },
  'power.perimeter-bonded': {
    title: 'Sol autour de la piscine relié',
    asks: 'Là où le sol autour de la piscine est ouvert ou refait, il est relié par l’acier de la coque, une grille ou un anneau.',
    mend: `Le relier avant de refermer. ${ELECTRICIAN}`,
  },
  'power.perimeter-points': {
    title: 'Sol relié en assez de points',
    asks: 'Acier, grille ou anneau est raccordé en autant de points, bien répartis, que le code en demande.',
    mend: `Ajouter les points qui manquent avant de refermer le sol. ${ELECTRICIAN}`,
  },
  'power.perimeter-width': {
    title: 'Sol relié assez large',
    asks: 'Le sol relié s’étend depuis la paroi intérieure aussi loin que le code le demande.',
    mend: `L’élargir avant de refermer le sol. ${ELECTRICIAN}`,
  },
  'power.ring-distance': {
    title: 'Anneau de cuivre à sa distance de la paroi',
    asks: 'Un anneau de cuivre au lieu d’une grille est dans la bande du code depuis la paroi intérieure.',
    mend: `Le déplacer avant de refermer le sol. ${ELECTRICIAN}`,
  },
  'power.ring-depth': {
    title: 'Anneau de cuivre à sa profondeur',
    asks: 'Un anneau de cuivre est dans la bande du code sous l’infrastructure.',
    mend: `Le corriger avant de refermer le sol. ${ELECTRICIAN}`,
  },
  'power.grid-pitch': {
    title: 'Maille de la grille de cuivre',
    asks: 'Les fils d’une grille de cuivre sont à un pied l’un de l’autre, dans la tolérance du code.',
    mend: `Corriger la maille avant de refermer le sol. ${ELECTRICIAN}`,
  },
};
