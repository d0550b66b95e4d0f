import type { RuleWords } from '../dictionary.ts';
import { RULES_POWER_BONDING } from './rules-power-bonding.ts';
import { RULES_POWER_WIRING } from './rules-power-wiring.ts';

const ELECTRICIAN =
  'Travail d’électricien licencié ; courant coupé et cadenassé avant d’ouvrir un couvercle.';

export const RULES_POWER: Readonly<Record<string, RuleWords>> = {
  'power.selector': {
    title: 'Sélecteur de tension accordé à l’alimentation',
    asks: 'L’alimentation mesurée est à un dixième près de la tension où se trouve le sélecteur du chauffe-piscine.',
    mend: `Mettre le sélecteur sur la tension mesurée, non sur celle de l’étiquette du panneau. ${ELECTRICIAN}`,
  },
  'power.control-voltage': {
    title: 'Tension de commande',
    asks: 'Tout en marche, le circuit de commande a de 85 à 110 % de 24 V, sinon ses relais claquent ou grillent.',
    mend: `Voir d’abord le sélecteur et l’alimentation, puis le transformateur et ce qui le charge. ${ELECTRICIAN}`,
  },
  'power.voltage-idle': {
    title: 'Tension d’alimentation, rien en marche',
    asks: 'Au chauffe-piscine, appareil et pompe arrêtés, la tension est à un dixième près de celle de la plaque.',
    mend: `Demander si le bâtiment est alimenté à 208 V ou à 240 V. ${ELECTRICIAN}`,
  },
  'power.voltage-running': {
    title: 'Tension d’alimentation, chauffe-piscine et pompe en marche',
    asks: 'Au chauffe-piscine, appareil et pompe en marche, la tension est à un dixième près de celle de la plaque.',
    mend: `Chercher un parcours long ou mince, une connexion desserrée, ou une alimentation faible. ${ELECTRICIAN}`,
  },
  'power.voltage-at-start': {
    title: 'Tension d’alimentation au démarrage de la pompe',
    asks: 'Pendant que la pompe démarre, la tension reste à 85 % de la plaque ou plus, sinon les relais décrochent.',
    mend: `Démarrer pompe et chauffage l’un après l’autre, donner à la pompe son propre circuit, ou renforcer l’alimentation. ${ELECTRICIAN}`,
  },
  'power.voltage-drop': {
    title: 'Chute de tension jusqu’au chauffe-piscine',
    asks: 'Du panneau au chauffe-piscine, le courant du circuit ne perd pas plus que le code ne recommande ; au Canada, que ce qu’il permet.',
    mend: `Un conducteur plus gros ou un chemin plus court. ${ELECTRICIAN}`,
  },
  'power.supply-sag': {
    title: 'Chute de tension de l’artère et du circuit ensemble',
    asks: 'Du repos à la marche, la tension au chauffe-piscine ne baisse pas plus que le code ne recommande.',
    mend: `Mesurer aussi au panneau : ce qui s’y perd vient de l’artère ou du distributeur. ${ELECTRICIAN}`,
  },
  'power.conductor-copper': {
    title: 'Conducteurs de cuivre',
    asks: 'Le fil vers le chauffe-piscine est en cuivre, comme le demandent ses bornes.',
    mend: `Du cuivre depuis le panneau, ou une épissure faite pour les deux métaux. ${ELECTRICIAN}`,
  },
  'power.wire-carries-load': {
    title: 'Le fil porte le courant du circuit',
    asks: 'Là où il passe, le courant admissible du conducteur de cuivre est au moins celui de tout ce qui est sur le circuit.',
    mend: `Un conducteur plus gros. ${ELECTRICIAN}`,
  },
  'power.breaker-carries-load': {
    title: 'Le disjoncteur porte le courant du circuit pendant des heures',
    asks: 'Le disjoncteur est calibré à 125 % du courant d’une charge qui dure des heures.',
    mend: `Un disjoncteur plus gros avec un conducteur assorti, ou un circuit à lui. ${ELECTRICIAN}`,
  },
  'power.breaker-protects-wire': {
    title: 'Le disjoncteur protège le fil',
    asks: 'Le disjoncteur n’est pas plus gros que ce que permet le conducteur.',
    mend: `Un disjoncteur plus petit, ou un conducteur plus gros. ${ELECTRICIAN}`,
  },
  'power.equipment-ground': {
    title: 'Conducteur de continuité des masses assez gros',
    asks: 'Le conducteur de continuité des masses, en cuivre, a le calibre que demande le disjoncteur, et grossit avec des conducteurs plus gros.',
    mend: `Tirer avec les conducteurs un conducteur de continuité plus gros. ${ELECTRICIAN}`,
  },
  ...RULES_POWER_WIRING,
  ...RULES_POWER_BONDING,
};
