import type { RuleWords } from '../dictionary.ts';

const ELECTRICIAN = 'Travail réservé à un électricien titulaire d’une licence.';

/** What holds everything around the water at one potential. */
export const RULES_POWER_BONDING: Readonly<Record<string, RuleWords>> = {
  'power.no-tingle': {
    title: 'Personne ne ressent de picotement',
    asks: 'Personne n’a ressenti de picotement dans l’eau, sur la plage de la piscine, ni au contact d’aucun métal à cet endroit.',
    mend: 'Tout le monde hors de l’eau et de la plage mouillée, sans toucher de métal ; puis couper le courant au panneau, et appeler un électricien titulaire d’une licence et le distributeur d’électricité. Personne n’y retourne avant que la cause soit trouvée.',
  },
  'power.bonded': {
    title: 'Chauffe-piscine relié à la liaison équipotentielle',
    asks: 'La borne du chauffe-piscine est reliée à la liaison équipotentielle de la piscine (au Canada : continuité des masses).',
    mend: `Le relier avant que quiconque soit dans l’eau. ${ELECTRICIAN}`,
  },
  'power.bond-size': {
    title: 'Conducteur de liaison équipotentielle assez gros',
    asks: 'Le conducteur de liaison équipotentielle, en cuivre nu, gainé ou isolé, a la grosseur que demande le code.',
    mend: `En poser un plus gros. ${ELECTRICIAN}`,
  },
  'power.bond-solid': {
    title: 'Conducteur de liaison équipotentielle massif',
    asks: 'Le conducteur de liaison équipotentielle est en cuivre massif, non toronné.',
    mend: `En poser un massif. ${ELECTRICIAN}`,
  },
  'power.water-bond': {
    title: 'Eau de la piscine reliée',
    asks: 'Les travaux finis, au moins 9 po² (58 cm²) de métal relié touchent encore l’eau.',
    mend: `Poser dans la tuyauterie une pièce reliée que l’eau touche. ${ELECTRICIAN}`,
  },
  'power.perimeter-bonded': {
    title: 'Sol autour de la piscine relié',
    asks: 'Là où le sol autour de la piscine est ouvert ou refait, il est relié par l’armature du bassin, un treillis ou un anneau.',
    mend: `Le relier avant de refermer. ${ELECTRICIAN}`,
  },
  'power.perimeter-points': {
    title: 'Sol relié en assez de points',
    asks: 'Armature, treillis ou anneau sont raccordés en autant de points, bien répartis, que le code en demande.',
    mend: `Ajouter les points qui manquent avant de refermer le sol. ${ELECTRICIAN}`,
  },
  'power.perimeter-width': {
    title: 'Sol relié assez large',
    asks: 'Le sol relié s’étend depuis la paroi intérieure aussi loin que le code le demande.',
    mend: `L’élargir avant de refermer le sol. ${ELECTRICIAN}`,
  },
  'power.ring-distance': {
    title: 'Anneau de cuivre à sa distance de la paroi',
    asks: 'Un anneau de cuivre posé au lieu d’un treillis est, depuis la paroi intérieure, à la distance que donne le code.',
    mend: `Le déplacer avant de refermer le sol. ${ELECTRICIAN}`,
  },
  'power.ring-depth': {
    title: 'Anneau de cuivre à sa profondeur',
    asks: 'Un anneau de cuivre est, sous le sol de fondation, à la profondeur que donne le code.',
    mend: `Le corriger avant de refermer le sol. ${ELECTRICIAN}`,
  },
  'power.grid-pitch': {
    title: 'Maille du treillis de cuivre',
    asks: 'Les fils d’un treillis de cuivre sont à un pied (300 mm) l’un de l’autre, à la tolérance du code.',
    mend: `Corriger la maille avant de refermer le sol. ${ELECTRICIAN}`,
  },
};
