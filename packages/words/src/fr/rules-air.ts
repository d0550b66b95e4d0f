import type { RuleWords } from '../dictionary.ts';

const OFF = 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction.';

export const RULES_AIR: Readonly<Record<string, RuleWords>> = {
  'air.combustion-air': {
    title: 'Air de combustion',
    asks: 'Le volume du local, ses ouvertures ou un ventilateur donnent leur air à tous les brûleurs qui s’y trouvent.',
    mend: `${OFF} Agrandir les ouvertures, l’une commençant à moins de 12 po (300 mm) du haut et l’autre à moins de 12 po (300 mm) du bas, ou poser un ventilateur de soufflage qui arrête les brûleurs quand il s’arrête.`,
  },
  'air.supply-opening': {
    title: 'Ouverture d’alimentation en air',
    asks: 'L’ouverture d’alimentation en air des brûleurs a la section libre que le code demande pour leur débit calorifique.',
    mend: `${OFF} Une ouverture plus grande, ou un conduit d’air d’au moins sa section.`,
  },
  'air.high-opening': {
    title: 'Ouverture haute de ventilation',
    asks: 'Au-dessus de 400 000 Btu/h (117 kW), une ouverture haute a le dixième de la section de l’ouverture d’alimentation en air, et au moins 10 po² (65 cm²).',
    mend: 'Une ouverture en hauteur, à au moins 12 po (300 mm) de l’ouverture d’alimentation en air.',
  },
  'air.opening-low': {
    title: 'Ouverture basse près du plancher',
    asks: 'L’ouverture basse commence à la distance du plancher que donne le code, ou plus bas.',
    mend: 'Abaisser l’ouverture, ou prolonger son conduit d’air vers le bas dans le local.',
  },
  'air.opening-high': {
    title: 'Ouverture haute près du plafond',
    asks: 'L’ouverture haute commence à la distance du plafond que donne le code, ou plus haut.',
    mend: 'Relever l’ouverture : l’air chaud s’accumule sous le plafond.',
  },
  'air.opening-side': {
    title: 'Ouvertures pas trop étroites',
    asks: 'Le petit côté d’une ouverture d’air a au moins la dimension que donne le code.',
    mend: 'Une ouverture de même section, avec un petit côté plus long.',
  },
  'air.room-pull': {
    title: 'Local sans dépression excessive',
    asks: 'Tous les ventilateurs et brûleurs en marche, la dépression du local reste assez faible pour que les gaz de combustion ne soient pas refoulés. C’est une estimation ; un manomètre posé à travers la porte tranche.',
    mend: `${OFF} Agrandir les ouvertures, souffler l’air que les autres ventilateurs extraient, ou déplacer le ventilateur d’extraction. Si quelqu’un se sent mal : sortir, et appeler d’abord les secours.`,
  },
  'air.vent-suits': {
    title: 'Conduit d’évacuation du bon type',
    asks: 'Les gaz qui condensent sortent par un conduit étanche du matériau que nomme le fabricant ; le conduit à simple paroi ne sert qu’aux appareils à coupe-tirage.',
    mend: `${OFF} Le conduit d’évacuation que nomment les instructions du fabricant.`,
  },
  'air.vent-carries': {
    title: 'Conduit d’évacuation suffisant',
    asks: 'La capacité du conduit d’évacuation ou du conduit de raccordement couvre au moins le débit calorifique du chauffe-piscine au niveau de la mer.',
    mend: `${OFF} Un conduit plus large ou plus haut, un parcours horizontal plus court, moins de coudes, ou un autre mode d’évacuation permis par le fabricant.`,
  },
  'air.vent-stays-dry': {
    title: 'Conduit d’évacuation qui reste sec',
    asks: 'Le débit calorifique du chauffe-piscine sur place suffit à garder assez chaud un conduit de ce diamètre.',
    mend: 'Un conduit d’évacuation ou de raccordement plus étroit qui suffit encore au débit calorifique, la double paroi au lieu de la simple, ou moins de longueur au froid.',
  },
  'air.common-vent-carries': {
    title: 'Conduit commun suffisant pour tous',
    asks: 'La capacité du conduit commun couvre le débit calorifique au niveau de la mer de tous les chauffe-piscines qui y sont raccordés.',
    mend: `${OFF} Un conduit commun plus large, ou un conduit séparé pour l’un d’eux.`,
  },
  'air.vent-high': {
    title: 'Conduit d’évacuation assez haut pour tirer',
    asks: 'Le conduit se termine au moins à la hauteur que donne le code au-dessus de la buse du chauffe-piscine.',
    mend: 'Un conduit plus haut.',
  },
  'air.cap-over-roof': {
    title: 'Chapeau dégagé du toit',
    asks: 'Le chapeau dépasse le toit de la hauteur que demande la pente, ou un mur plus haut à proximité.',
    mend: 'Un conduit plus haut ; près d’un mur à moins de 10 pi (3 m), dépasser aussi de 2 pi (600 mm) le haut de ce mur.',
  },
  'air.flue-from-openings': {
    title: 'Gaz de combustion loin des fenêtres et des portes',
    asks: 'La sortie des gaz de combustion est aussi loin de toute ouverture d’un bâtiment que le code le demande pour son type.',
    mend: 'Un autre emplacement, ou un conduit qui éloigne les gaz de combustion. Si quelqu’un se sent mal : sortir, et appeler d’abord les secours.',
  },
  'air.flue-from-inlet': {
    title: 'Gaz de combustion loin des prises d’air',
    asks: 'La sortie des gaz de combustion est assez loin, ou assez au-dessus, de toute prise par laquelle un ventilateur aspire de l’air vers un bâtiment.',
    mend: 'Un autre emplacement, un terminal plus haut, ou une prise d’air déplacée.',
  },
  'air.terminal-over-ground': {
    title: 'Terminal au-dessus du sol',
    asks: 'Le dessous d’un terminal mural est au moins à cette hauteur du sol ; la neige compte comme le sol.',
    mend: 'Un terminal plus haut.',
  },
  'air.terminal-over-walkway': {
    title: 'Terminal au-dessus d’un passage public',
    asks: 'Le long d’un passage public, le terminal est plus haut que la tête des gens.',
    mend: 'Un terminal plus haut, ou un autre mur.',
  },
  'air.no-chemicals': {
    title: 'Aucun produit de piscine près de la flamme',
    asks: 'Aucun produit chimique de piscine n’est rangé dans le local du chauffe-piscine : les vapeurs le rongent, et la flamme peut les allumer.',
    mend: 'Un rangement séparé pour les produits chimiques, loin de toute flamme.',
  },
};
