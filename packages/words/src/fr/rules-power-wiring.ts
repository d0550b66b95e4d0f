import type { RuleWords } from '../dictionary.ts';

const ELECTRICIAN =
  'Travail réservé à un électricien titulaire d’une licence ; courant coupé et cadenassé avant d’ouvrir un couvercle.';

/** Protection, disconnect, buried and low-voltage wiring, control. */
export const RULES_POWER_WIRING: Readonly<Record<string, RuleWords>> = {
  'power.ground-fault': {
    title: 'Protection différentielle (DDFT)',
    asks: 'Le circuit d’un chauffe-piscine à gaz au-dessus de la limite de contact de très basse tension protège les gens contre les fuites à la terre.',
    mend: `Poser la protection avant d’utiliser le chauffe-piscine. ${ELECTRICIAN}`,
  },
  'power.ground-fault-near-water': {
    title: 'Protection différentielle (DDFT) près de l’eau',
    asks: 'L’équipement à moins de 3 m de la paroi intérieure, et non séparé d’elle, est protégé contre les fuites à la terre.',
    mend: `Poser la protection avant d’utiliser le chauffe-piscine. ${ELECTRICIAN}`,
  },
  'power.disconnect-in-sight': {
    title: 'Sectionneur en vue',
    asks: 'Un sectionneur est en vue du chauffe-piscine, à 50 pi (15 m) au plus.',
    mend: `Un sectionneur en vue, hors de portée depuis l’eau. ${ELECTRICIAN}`,
  },
  'power.disconnect-from-water': {
    title: 'Sectionneur hors de portée depuis l’eau',
    asks: 'Le sectionneur est à 5 pi (1,5 m) ou plus de la paroi intérieure de la piscine, ou derrière une barrière permanente.',
    mend: `Le déplacer, ou mettre une barrière entre lui et l’eau. ${ELECTRICIAN}`,
  },
  'power.fixed-wiring': {
    title: 'Aucune rallonge électrique',
    asks: 'Le chauffe-piscine n’est pas alimenté par une rallonge.',
    mend: `Débrancher, et laisser le chauffe-piscine à l’arrêt jusqu’à la pose d’un câblage fixe. ${ELECTRICIAN}`,
  },
  'power.burial-depth': {
    title: 'Câblage enfoui assez profondément',
    asks: 'Le câblage enfoui a le recouvrement que demandent son mode de pose et ce qui est au-dessus.',
    mend: `Le poser plus bas, dans un conduit électrique métallique, ou sous du béton. ${ELECTRICIAN}`,
  },
  'power.raceway-near-pool': {
    title: 'Câblage enfoui sous canalisation près de la piscine',
    asks: 'Sous la piscine ou à moins de 5 pi (1,5 m) d’elle, le câblage est dans une canalisation électrique, jamais à même la terre.',
    mend: `L’éloigner de la piscine, ou poser une canalisation électrique. ${ELECTRICIAN}`,
  },
  'power.burial-near-pool': {
    title: 'Câblage près de la piscine enfoui assez profondément',
    asks: 'Sous la piscine ou à moins de 5 pi (1,5 m) d’elle, la canalisation électrique est aussi profonde que le demande son matériau.',
    mend: `L’éloigner de la piscine, ou l’enfouir plus bas. ${ELECTRICIAN}`,
  },
  'power.low-voltage-apart': {
    title: 'Câblage de très basse tension séparé de la puissance',
    asks: 'Le câblage de commande a sa propre canalisation électrique, une cloison, ou son propre chemin ; il n’en partage aucun avec la puissance.',
    mend: `Lui donner sa propre canalisation. ${ELECTRICIAN}`,
  },
  'power.low-voltage-spacing': {
    title: 'Câble de très basse tension loin de la puissance',
    asks: 'Un câble de commande hors canalisation reste à 2 po (50 mm) des conducteurs de puissance.',
    mend: 'Déplacer le câble, ou le mettre dans une canalisation.',
  },
  'power.interlocked': {
    title: 'Chauffe-piscine asservi à la pompe',
    asks: 'Le chauffe-piscine ne reçoit le courant, ou la demande de chaleur, que si sa pompe marche ; son propre contrôle d’eau s’y ajoute.',
    mend: `L’alimenter du côté commandé de la pompe, ou par le contrôleur de celle-ci. ${ELECTRICIAN}`,
  },
  'power.run-on': {
    title: 'Post-circulation après le brûleur',
    asks: 'La pompe tourne après le brûleur aussi longtemps que le veulent les instructions du chauffe-piscine, pour que la chaleur restante passe dans l’eau.',
    mend: `Régler à cette durée le contact d’arrêt anticipé de la minuterie, ou la post-circulation du contrôleur. ${ELECTRICIAN}`,
  },
  'power.local-limit': {
    title: 'Thermostat du chauffe-piscine comme limite',
    asks: 'Commandé à distance, le chauffe-piscine s’arrête quand même à son propre thermostat.',
    mend: 'Régler son thermostat à la plus haute température voulue, jamais plus chaud que les gens ne le supportent.',
  },
  'power.remote-from-water': {
    title: 'Commande à distance loin de l’eau',
    asks: 'Une commande à distance câblée est à 10 pi (3 m) ou plus de la paroi intérieure de la piscine.',
    mend: `La déplacer, ou en choisir une homologuée pour le bord de l’eau. ${ELECTRICIAN}`,
  },
};
