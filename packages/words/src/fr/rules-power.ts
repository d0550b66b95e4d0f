import type { RuleWords } from '../dictionary.ts';
import { RULES_POWER_BONDING } from './rules-power-bonding.ts';
import { RULES_POWER_WIRING } from './rules-power-wiring.ts';

const ELECTRICIAN =
  'Travail réservé à un électricien titulaire d’une licence ; courant coupé et cadenassé avant d’ouvrir un couvercle.';

export const RULES_POWER: Readonly<Record<string, RuleWords>> = {
  'power.selector': {
    title: 'Sélecteur de tension accordé à l’alimentation',
    asks: 'La tension mesurée est, à un dixième près, celle où se trouve le sélecteur du chauffe-piscine.',
    mend: `Mettre le sélecteur sur la tension mesurée, non sur celle de l’étiquette du panneau. ${ELECTRICIAN}`,
  },
  'power.control-voltage': {
    title: 'Tension de commande',
    asks: 'Tout en marche, le circuit de commande a de 85 à 110 % de 24 V, sinon ses relais vibrent ou grillent.',
    mend: `Vérifier d’abord le sélecteur et l’alimentation, puis le transformateur et ce qui le charge. ${ELECTRICIAN}`,
  },
  'power.voltage-idle': {
    title: 'Tension d’alimentation, tout à l’arrêt',
    asks: 'Au chauffe-piscine, chauffe-piscine et pompe à l’arrêt, la tension est, à un dixième près, celle de la plaque signalétique.',
    mend: `Demander si le bâtiment est alimenté à 208 V ou à 240 V. ${ELECTRICIAN}`,
  },
  'power.voltage-running': {
    title: 'Tension d’alimentation, chauffe-piscine et pompe en marche',
    asks: 'Au chauffe-piscine, chauffe-piscine et pompe en marche, la tension est, à un dixième près, celle de la plaque signalétique.',
    mend: `Chercher un câblage long ou trop mince, une connexion desserrée, ou une alimentation faible. ${ELECTRICIAN}`,
  },
  'power.voltage-at-start': {
    title: 'Tension d’alimentation au démarrage de la pompe',
    asks: 'Pendant que la pompe démarre, la tension reste au moins à 85 % de celle de la plaque signalétique, sinon les relais décrochent.',
    mend: `Démarrer pompe et chauffe-piscine l’un après l’autre, donner à la pompe son propre circuit, ou renforcer l’alimentation. ${ELECTRICIAN}`,
  },
  'power.voltage-drop': {
    title: 'Chute de tension jusqu’au chauffe-piscine',
    asks: 'Du panneau au chauffe-piscine, le courant du circuit ne perd pas plus de tension que le code n’en recommande ; au Canada, pas plus qu’il n’en permet.',
    mend: `Un conducteur plus gros ou un chemin plus court. ${ELECTRICIAN}`,
  },
  'power.supply-sag': {
    title: 'Chute de tension de l’artère et du circuit ensemble',
    asks: 'Du repos à la marche, la tension au chauffe-piscine ne baisse pas plus que le code ne recommande.',
    mend: `Mesurer aussi au panneau : ce qui s’y perd vient de l’artère ou du distributeur d’électricité. ${ELECTRICIAN}`,
  },
  'power.conductor-copper': {
    title: 'Conducteurs de cuivre',
    asks: 'Les conducteurs vers le chauffe-piscine sont en cuivre, comme le demandent ses bornes.',
    mend: `Du cuivre depuis le panneau, ou une épissure faite pour les deux métaux. ${ELECTRICIAN}`,
  },
  'power.wire-carries-load': {
    title: 'Conducteur suffisant pour le courant du circuit',
    asks: 'Là où il passe, le courant admissible du conducteur de cuivre est au moins celui de tout ce qui est sur le circuit.',
    mend: `Un conducteur plus gros. ${ELECTRICIAN}`,
  },
  'power.breaker-carries-load': {
    title: 'Disjoncteur suffisant pour un courant de longue durée',
    asks: 'Le calibre du disjoncteur est au moins 125 % du courant d’une charge qui dure des heures.',
    mend: `Un disjoncteur plus gros avec un conducteur assorti, ou un circuit séparé. ${ELECTRICIAN}`,
  },
  'power.breaker-protects-wire': {
    title: 'Disjoncteur qui protège le conducteur',
    asks: 'Le disjoncteur n’est pas plus gros que ce que permet le conducteur.',
    mend: `Un disjoncteur plus petit, ou un conducteur plus gros. ${ELECTRICIAN}`,
  },
  'power.equipment-ground': {
    title: 'Conducteur de continuité des masses assez gros',
    asks: 'Le conducteur de continuité des masses, en cuivre, a la grosseur que demande le disjoncteur, et grossit avec des conducteurs surdimensionnés.',
    mend: `Tirer avec les autres un conducteur de continuité des masses plus gros. ${ELECTRICIAN}`,
  },
  ...RULES_POWER_WIRING,
  ...RULES_POWER_BONDING,
};
