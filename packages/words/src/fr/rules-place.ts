import type { RuleWords } from '../dictionary.ts';

const PEOPLE_FIRST =
  'Si quelqu’un se sent mal à proximité : arrêter, s’éloigner, et appeler d’abord les secours.';

export const RULES_PLACE: Readonly<Record<string, RuleWords>> = {
  'place.clearance': {
    title: 'Dégagement de la plaque signalétique',
    asks: 'Droit devant cette face, rien n’est plus près que ne le permettent la plaque signalétique ou les instructions.',
    mend: 'Déplacer le chauffe-piscine, le tourner, ou enlever ce qui est trop près ; rien de combustible n’y reste entre-temps.',
  },
  'place.usual-clearance': {
    title: 'Dégagement usuel à l’extérieur',
    asks: 'Tant que personne n’a lu la plaque signalétique : ce que le métier garde libre devant cette face d’un chauffe-piscine extérieur.',
    mend: 'Lire les dégagements sur la plaque signalétique ; ils prévalent. Sinon déplacer ou tourner le chauffe-piscine.',
  },
  'place.unlisted-clearance': {
    title: 'Dégagement d’un chauffe-piscine non homologué',
    asks: 'Un chauffe-piscine sans homologation garde 12 po (300 mm) libres sur les côtés et à l’arrière.',
    mend: 'Un chauffe-piscine homologué, ou plus de place. Consulter l’autorité avant d’en installer un qui ne l’est pas.',
  },
  'place.service-room': {
    title: 'Place pour l’entretien',
    asks: 'Un espace de niveau de 30 po (75 cm) sur 30 po (75 cm) est libre devant le côté d’entretien.',
    mend: 'Tourner le côté d’entretien là où il y a de la place, ou déplacer le chauffe-piscine.',
  },
  'place.not-under-deck': {
    title: 'Rien au-dessus du chauffe-piscine',
    asks: 'Aucune terrasse, galerie ni autre construction n’est au-dessus d’un chauffe-piscine extérieur : les gaz de combustion s’y accumulent.',
    mend: `Le laisser à l’arrêt jusqu’à ce qu’il soit à l’air libre, ou évacué comme le dit le fabricant. ${PEOPLE_FIRST}`,
  },
  'place.property-line': {
    title: 'Distance à la limite de propriété',
    asks: 'Un chauffe-piscine extérieur est aussi loin de chaque limite de propriété que le code du gaz le demande.',
    mend: 'Un autre emplacement, plus loin de la limite.',
  },
  'place.setback': {
    title: 'Marge de recul du zonage',
    asks: 'Le chauffe-piscine est derrière la marge que le zonage de l’adresse demande pour l’équipement.',
    mend: 'Un autre emplacement, ou une dérogation écrite de l’autorité avant de couler le socle.',
  },
  'place.air-conditioner': {
    title: 'Distance au climatiseur',
    asks: 'Le chauffe-piscine et le climatiseur extérieur sont assez loin pour que ni l’un ni l’autre n’aspire ce que l’autre rejette.',
    mend: 'Un autre emplacement, ou la façade tournée à l’opposé du climatiseur.',
  },
  'place.regulator-vent': {
    title: 'Distance à l’évent d’un régulateur de gaz',
    asks: 'Aucune flamme n’est là où un régulateur peut rejeter du gaz.',
    mend: 'Un autre emplacement, ou l’évent prolongé par un technicien en gaz certifié. D’ici là, ne pas allumer.',
  },
  'place.electrical-space': {
    title: 'Espace de travail de l’équipement électrique',
    asks: 'Le chauffe-piscine reste hors de l’espace de travail devant panneaux et sectionneurs.',
    mend: 'Un autre emplacement ; l’espace devant l’équipement électrique est pour qui y travaille.',
  },
  'place.water-edge': {
    title: 'Distance au bord de l’eau',
    asks: 'Personne dans l’eau ne peut atteindre le chauffe-piscine.',
    mend: 'Un autre emplacement, ou une barrière qu’on ne peut franchir du bras ; voir ce qu’ajoute le code de l’électricité.',
  },
  'place.propane-tank': {
    title: 'Distance à la soupape de décharge du réservoir de propane',
    asks: 'Aucune flamme n’est là où la soupape de décharge du réservoir peut relâcher du gaz.',
    mend: 'Un autre emplacement, ou le réservoir déplacé par un technicien en propane certifié. D’ici là, ne pas allumer.',
  },
  'place.pad': {
    title: 'Socle',
    asks: 'Il repose sur un socle de niveau et incombustible.',
    mend: 'Une dalle de béton, ou des pavés sur un lit qui ne s’affaisse pas.',
  },
  'place.base-height': {
    title: 'Base au-dessus du sol',
    asks: 'Au sol, il repose sur une base de niveau, à 3 po (75 mm) ou plus au-dessus du sol environnant.',
    mend: 'Une base plus haute. Le collecteur monte avec elle : revoir le réglage du pressostat d’eau.',
  },
  'place.ignition-height': {
    title: 'Flamme au-dessus du plancher du garage',
    asks: 'Dans un garage, la flamme est à 18 po (450 mm) ou plus au-dessus du plancher, où stagnent les vapeurs de carburant.',
    mend: 'Un support, ou un autre emplacement. D’ici là, le laisser à l’arrêt.',
  },
  'place.above-flood': {
    title: 'Au-dessus de la crue de calcul',
    asks: 'Sa base est au niveau de crue de calcul de l’adresse ou au-dessus.',
    mend: 'Un support plus haut ; le collecteur monte avec lui, donc revoir pressostat d’eau, gaz et accès. Des commandes qui ont été sous l’eau se remplacent, jamais ne se sèchent.',
  },
  'place.above-snow': {
    title: 'Au-dessus de la neige',
    asks: 'Le dessus du chauffe-piscine, d’où sortent les gaz de combustion, dépasse d’un pied (300 mm) ou plus la neige la plus épaisse pendant l’usage.',
    mend: 'Un support ou un toit que permet le fabricant, ou le laisser à l’arrêt tant que la neige n’est pas dégagée autour.',
  },
  'place.stands-in-wind': {
    title: 'Tient au vent de calcul',
    asks: 'Par son poids il reste debout au vent de calcul, ou un ancrage homologué ou calculé par un ingénieur le tient.',
    mend: 'Un ancrage homologué ou calculé ; là où l’on connaît les ouragans, le code le demande expressément.',
  },
  'place.hot-surfaces': {
    title: 'Surfaces chaudes hors de portée',
    asks: 'Par son emplacement ou par une protection, personne ne touche ce qui devient chaud.',
    mend: 'Une protection qui laisse leur place à l’air et à l’entretien.',
  },
  'place.sprinkler': {
    title: 'Hors des arroseurs',
    asks: 'Aucun arroseur de pelouse ne mouille le chauffe-piscine.',
    mend: 'Déplacer ou tourner la tête d’arrosage.',
  },
  'place.walkway': {
    title: 'Passage laissé libre',
    asks: 'Sur le plan, le chauffe-piscine n’est sur aucun passage.',
    mend: 'Un autre emplacement, ou un autre chemin pour les gens.',
  },
  'place.connections-face': {
    title: 'Raccords d’eau tournés vers la pompe',
    asks: 'Sur le plan, le côté des tuyaux d’eau ne tourne pas le dos à la pompe.',
    mend: 'Tourner le chauffe-piscine, ou déplacer son collecteur de l’autre côté si le fabricant le permet.',
  },
  'place.noise': {
    title: 'Bruit à la limite de propriété',
    asks: 'À l’air libre, le bruit de la plaque signalétique n’est pas plus fort à la limite de propriété que ce que le lieu permet.',
    mend: 'Plus loin de la limite, un mur entre les deux, ou d’autres heures. Des murs près du chauffe-piscine le rendent jusqu’à 6 dB plus fort que ce calcul.',
  },
};
