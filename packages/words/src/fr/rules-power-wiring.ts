import type { RuleWords } from '../dictionary.ts';

const ELECTRICIAN =
  'Travail d’électricien licencié ; courant coupé et cadenassé avant d’ouvrir un couvercle.';

/** Protection, disconnect, buried and low-voltage wiring, control. */
export const RULES_POWER_WIRING: Readonly<Record<string, RuleWords>> = {
  'power.ground-fault': {
    title: 'Protection différentielle (DDFT)',
    asks: 'Le circuit d’un chauffe-piscine à gaz au-dessus de la limite de contact à basse tension protège les gens contre les fuites à la terre.',
    mend: `Poser la protection avant de se servir de l’appareil. ${ELECTRICIAN}`,
  },
  'power.ground-fault-near-water': {
    title: 'Protection différentielle près de l’eau',
    asks: 'L’équipement à moins de 3 m de la paroi intérieure, et non séparé d’elle, est protégé contre les fuites à la terre.',
    mend: `Poser la protection avant de se servir de l’appareil. ${ELECTRICIAN}`,
  },
  'power.disconnect-in-sight': {
    title: 'Sectionneur en vue',
    asks: 'Un moyen de sectionnement est en vue du chauffe-piscine, à 50 pi au plus.',
    mend: `Un sectionneur en vue, hors de portée depuis l’eau. ${ELECTRICIAN}`,
  },
  'power.disconnect-from-water': {
    title: 'Sectionneur hors de portée depuis l’eau',
    asks: 'Le sectionneur est à 5 pi ou plus de la paroi intérieure de la piscine, ou derrière une barrière permanente.',
    mend: `Le déplacer, ou mettre une barrière entre lui et l’eau. ${ELECTRICIAN}`,
  },
  'power.fixed-wiring': {
    title: 'Pas de rallonge',
    asks: 'Le chauffe-piscine n’est pas alimenté par une rallonge.',
    mend: `La débrancher et garder l’appareil éteint jusqu’à un câblage fixe. ${ELECTRICIAN}`,
  },
  'power.burial-depth': {
    title: 'Câblage enfoui assez profond',
    asks: 'Le câblage enfoui a le recouvrement que demandent sa méthode et ce qui est au-dessus.',
    mend: `Le poser plus profond, dans un conduit métallique, ou sous béton. ${ELECTRICIAN}`,
  },
  'power.raceway-near-pool': {
    title: 'Câblage enfoui près de la piscine dans une canalisation',
    asks: 'Sous la piscine ou à moins de 5 pi d’elle, le câblage est dans une canalisation et non à même le sol.',
    mend: `L’éloigner de la piscine, ou poser une canalisation. ${ELECTRICIAN}`,
  },
  'power.burial-near-pool': {
    title: 'Câblage près de la piscine enfoui assez profond',
    asks: 'Sous la piscine ou à moins de 5 pi d’elle, la canalisation est aussi profonde que le demande sa matière.',
    mend: `L’éloigner de la piscine, ou le poser plus profond. ${ELECTRICIAN}`,
  },
  'power.low-voltage-apart': {
    title: 'Câblage à basse tension séparé de la puissance',
    asks: 'Le câblage de commande a sa propre canalisation, une cloison, ou son propre chemin ; il n’en partage aucun avec la puissance.',
    mend: `Lui donner sa propre canalisation. ${ELECTRICIAN}`,
  },
  'power.low-voltage-spacing': {
    title: 'Câble à basse tension loin de la puissance',
    asks: 'Un câble de commande hors canalisation reste à 2 po des conducteurs de puissance.',
    mend: 'Déplacer le câble, ou le mettre dans une canalisation.',
  },
  'power.interlocked': {
    title: 'Chauffe-piscine verrouillé avec la pompe',
    asks: 'Le chauffe-piscine n’a de courant, ou d’appel de chaleur, que si sa pompe marche ; son propre interrupteur d’eau s’y ajoute.',
    mend: `L’alimenter par le côté commuté de la pompe, ou par sa commande. ${ELECTRICIAN}`,
  },
  'power.run-on': {
    title: 'La pompe marche après le brûleur',
    asks: 'La pompe continue aussi longtemps que le veulent les instructions, pour que la chaleur qui reste aille dans l’eau.',
    mend: `Régler à ce temps le contact d’arrêt anticipé de la minuterie, ou le refroidissement de la commande. ${ELECTRICIAN}`,
  },
  'power.local-limit': {
    title: 'Thermostat de l’appareil comme limite',
    asks: 'Appelé d’ailleurs, le chauffe-piscine s’arrête quand même à son propre thermostat.',
    mend: 'Régler son thermostat à l’eau la plus chaude voulue, pas plus chaude que ce que supportent les gens.',
  },
  'power.remote-from-water': {
    title: 'Commande à distance loin de l’eau',
    asks: 'Une commande à distance câblée est à 10 pi ou plus de la paroi intérieure de la piscine.',
    mend: `La déplacer, ou en choisir une homologuée pour le bord de l’eau. ${ELECTRICIAN}`,
  },
};
