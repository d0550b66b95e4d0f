import type { RuleWords } from '../dictionary.ts';

export const RULES_WATER: Readonly<Record<string, RuleWords>> = {
  'water.heater-flow': {
    title: 'Débit d’eau dans le chauffe-piscine',
    asks: 'À cette vitesse et dans cet état du filtre, le chauffe-piscine ne reçoit ni moins ni plus d’eau que ne le permet sa plaque signalétique.',
    mend: 'Trop peu : vitesse plus grande, tuyau plus large, filtre plus propre, moins de dérivation. Trop : plus de dérivation, vitesse plus basse.',
  },
  'water.bypass-range': {
    title: 'Une seule ouverture de dérivation pour tous les états',
    asks: 'Il existe une ouverture de la dérivation qui garde le débit du chauffe-piscine dans sa plage, à toute vitesse et dans tout état du filtre où il peut marcher.',
    mend: 'Rapprocher les vitesses de chauffage, nettoyer le filtre plus tôt, ou confier le débit à une vanne qui le règle seule.',
  },
  'water.bypass-handle': {
    title: 'Poignée de dérivation bien placée',
    asks: 'La dérivation est dans la plage d’ouverture qui convient à toutes les vitesses et à tous les états du filtre.',
    mend: 'Tourner la poignée dans la plage indiquée, vérifier au débitmètre ou à l’élévation de température, puis la repérer.',
  },
  'water.header-flow': {
    title: 'Débit dans un collecteur de 2 po',
    asks: 'Le collecteur de 2 po (50 mm) du chauffe-piscine ne prend pas plus de 125 gal US/min (473 L/min) ; au-delà, une partie de l’eau doit passer hors du chauffe-piscine.',
    mend: 'Une dérivation hors du chauffe-piscine, ou une vitesse plus basse.',
  },
  'water.temperature-rise': {
    title: 'Élévation de température dans le chauffe-piscine',
    asks: 'Au plus petit débit qu’il reçoit, le chauffe-piscine n’élève pas l’eau de plus de degrés que ne le permet sa plaque signalétique.',
    mend: 'Plus d’eau dans le chauffe-piscine : moins de dérivation, vitesse plus grande, filtre plus propre.',
  },
  'water.exchanger-inlet': {
    title: 'Eau assez chaude à l’entrée de l’échangeur',
    asks: 'Au début de la montée en température, l’eau qui entre dans l’échangeur n’est pas plus froide que le chauffe-piscine ne le supporte longtemps.',
    mend: 'Au-dessous, les gaz de combustion condensent à l’intérieur. Demander au fabricant une vanne mélangeuse ou une façon de démarrer sur eau froide.',
  },
  'water.heater-pressure': {
    title: 'Pression d’eau au chauffe-piscine, une vanne fermée',
    asks: 'La pompe à sa plus grande vitesse, contre un retour fermé, reste sous la pression de service du chauffe-piscine.',
    mend: 'Limiter la plus grande vitesse, ou ôter tout ce qui peut fermer le retour en aval du chauffe-piscine.',
  },
  'water.switch-window': {
    title: 'Pressostat d’eau réglable',
    asks: 'Il existe un réglage qui ouvre à l’arrêt de la pompe et reste fermé à toute vitesse et dans tout état du filtre où le chauffe-piscine marche.',
    mend: 'Monter un vrai contrôleur de débit, ou relever la plus petite vitesse de chauffage. Ne jamais ponter le pressostat, même pour un essai.',
  },
  'water.switch-setting': {
    title: 'Pressostat d’eau bien réglé',
    asks: 'Le pressostat ferme au-dessus de ce que l’eau au repos lui fait sentir, et au-dessous du moins qu’il sent en marche.',
    mend: 'Le régler dans la plage indiquée, selon les instructions du fabricant, puis vérifier qu’il ouvre quand la pompe s’arrête.',
  },
  'water.pipe-velocity': {
    title: 'Vitesse de l’eau dans le tuyau',
    asks: 'Au plus grand débit, l’eau ne va pas plus vite que la limite de l’aspiration, ou celle du refoulement.',
    mend: 'Le diamètre suivant pour ce tuyau, un second tuyau en parallèle, ou une vitesse maximale plus basse.',
  },
  'water.filter-rate': {
    title: 'Filtre non surchargé',
    asks: 'Au plus grand débit, le filtre ne prend pas plus d’eau par pied carré que ne le permet son fabricant.',
    mend: 'Une vitesse maximale plus basse, ou un filtre plus grand.',
  },
  'water.filter-loading': {
    title: 'Filtre pas encore à nettoyer',
    asks: 'Ramenée à la vitesse de la mesure à l’état propre, la pression au manomètre a monté de moins que l’écart auquel on nettoie.',
    mend: 'Nettoyer le filtre, puis noter pression et vitesse à l’état propre.',
  },
  'water.turnover': {
    title: 'Eau recyclée à temps',
    asks: 'À la vitesse de filtration, le filtre près d’être nettoyé, toute l’eau y passe dans le temps demandé.',
    mend: 'Une vitesse de filtration plus grande, plus d’heures par jour, ou un filtre plus propre.',
  },
  'water.pump-suction': {
    title: 'Réserve à l’aspiration de la pompe',
    asks: 'Au plus grand débit et avec l’eau la plus chaude, l’entrée de la pompe reste loin de l’ébullition de ce que la pompe demande (NPSH).',
    mend: 'Un tuyau d’aspiration plus large, un panier propre, une vitesse plus basse, ou la pompe plus bas et plus près.',
  },
  'water.check-valve': {
    title: 'Clapet de non-retour après le chauffe-piscine',
    asks: 'Un clapet de non-retour empêche le chlore de redescendre dans le chauffe-piscine pendant que la pompe est arrêtée.',
    mend: 'En monter un entre le chauffe-piscine et le doseur de produits chimiques.',
  },
};
