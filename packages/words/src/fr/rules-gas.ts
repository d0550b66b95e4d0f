import type { RuleWords } from '../dictionary.ts';

export const RULES_GAS: Readonly<Record<string, RuleWords>> = {
  'gas.fuel-matches': {
    title: 'Même gaz à l’appareil et à l’alimentation',
    asks: 'Le gaz inscrit sur la plaque signalétique du chauffe-piscine est celui de la tuyauterie.',
    mend: 'Ne pas allumer. Avant toute autre chose, faire confirmer le gaz par le fournisseur ou par le représentant du fabricant.',
  },
  'gas.burner-pressure-running': {
    title: 'Pression de gaz au chauffe-piscine, tout en marche',
    asks: 'Tous les appareils en marche, le manomètre à l’entrée du robinet de gaz du chauffe-piscine indique au moins le minimum de la plaque signalétique.',
    mend: 'Chercher le tronçon qui coûte le plus de pression, ou une pression d’alimentation que les personnes autorisées peuvent relever.',
  },
  'gas.burner-pressure-lock-up': {
    title: 'Pression de gaz au chauffe-piscine, tout à l’arrêt',
    asks: 'Sans débit de gaz, la pression de fermeture du régulateur ne dépasse pas ce que supporte le robinet de gaz du chauffe-piscine.',
    mend: 'Fermer le gaz et laisser le chauffe-piscine à l’arrêt jusqu’à ce qu’un technicien en gaz certifié ait corrigé la pression.',
  },
  'gas.code-pressure': {
    title: 'Pression que l’équation du code laisse au chauffe-piscine',
    asks: 'Charge raccordée, équation du code, raccords comptés en longueur équivalente : il reste au moins le minimum de la plaque signalétique.',
    mend: 'Un diamètre supérieur sur le parcours vers le chauffe-piscine, ou une pression d’alimentation plus élevée avec un régulateur de canalisation.',
  },
  'gas.section-capacity': {
    title: 'Tronçon suffisant par l’équation de dimensionnement du code',
    asks: 'À la perte de pression de calcul et à la plus grande longueur, raccords compris, l’équation du code (pour le tube ondulé, son tableau) laisse passer dans le tronçon tout ce qui est raccordé en aval. Un tableau imprimé, lu à la ligne suivante, peut donner moins.',
    mend: 'Le diamètre suivant pour ce tronçon, ou un réseau à pression plus élevée.',
  },
  'gas.meter-capacity': {
    title: 'Compteur suffisant pour la charge raccordée',
    asks: 'La capacité inscrite sur la plaque du compteur couvre tout ce qui est raccordé. En altitude, un compteur laisse passer moins : la pression calculée au chauffe-piscine en tient compte, cette vérification non.',
    mend: 'Demander un compteur plus grand au distributeur de gaz, en joignant la charge raccordée.',
  },
  'gas.regulator-capacity': {
    title: 'Régulateur de canalisation suffisant pour sa charge',
    asks: 'À la pression d’entrée d’ici, le régulateur laisse passer tout ce qui est raccordé en aval.',
    mend: 'Un régulateur plus grand, ou un régulateur réservé au chauffe-piscine.',
  },
  'gas.tank-vaporisation': {
    title: 'Réservoir de propane : assez de vapeur en hiver',
    asks: 'Au plus bas remplissage et par le plus grand froid, le réservoir vaporise au moins le débit calorifique raccordé.',
    mend: 'Un réservoir plus grand, un second à côté, ou un remplissage minimal plus élevé convenu avec le fournisseur.',
  },
  'gas.altitude-rating': {
    title: 'Chauffe-piscine permis à cette altitude',
    asks: 'L’altitude des lieux ne dépasse pas celle où le chauffe-piscine, avec les pièces montées, peut fonctionner.',
    mend: 'Demander au fabricant les pièces pour cette altitude ; au-dessus d’environ 10 000 pi (3 000 m), il n’y a en général rien d’offert.',
  },
  'gas.shut-off-distance': {
    title: 'Robinet d’arrêt à portée du chauffe-piscine',
    asks: 'Le robinet d’arrêt de l’appareil n’est pas plus loin du chauffe-piscine que le code le permet.',
    mend: 'Un robinet d’arrêt et un raccord union près du chauffe-piscine.',
  },
  'gas.sediment-trap': {
    title: 'Poche de sédimentation avant le chauffe-piscine',
    asks: 'Une poche de sédimentation retient saletés et eau juste avant le robinet de gaz du chauffe-piscine.',
    mend: 'Monter un té avec mamelon et bouchon au bas de la descente, le plus près possible du chauffe-piscine.',
  },
  'gas.test-pressure': {
    title: 'Pression d’essai suffisante',
    asks: 'L’essai se fait à la pression que le code demande au-dessus de la plus grande pression de service.',
    mend: 'Isoler d’abord les appareils et les régulateurs, puis refaire l’essai à la pression indiquée.',
  },
  'gas.test-duration': {
    title: 'Durée d’essai suffisante',
    asks: 'La pression tient au moins le temps que demande le code.',
    mend: 'Maintenir l’essai pendant le temps indiqué.',
  },
  'gas.test-gauge-range': {
    title: 'Manomètre d’essai assez précis',
    asks: 'La pleine échelle du manomètre ne dépasse pas le multiple de la pression d’essai que permet le code.',
    mend: 'Prendre un manomètre de plus petite échelle, pour qu’une petite fuite se voie.',
  },
};
