import type { RuleWords } from '../dictionary.ts';

export const RULES_VENT: Readonly<Record<string, RuleWords>> = {
  'air.screen-mesh': {
    title: 'Grillage assez ouvert',
    asks: 'La maille d’un grillage d’ouverture d’air n’est pas plus fine que celle du code : plus fine, la poussière la bouche.',
    mend: 'Un grillage plus ouvert, nettoyé à chaque visite.',
  },
  'air.supply-interlock': {
    title: 'Le ventilateur d’air arrête les brûleurs',
    asks: 'Là où un ventilateur amène l’air de combustion, les brûleurs s’arrêtent avec lui.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Un contrôleur de débit d’air dans le conduit du ventilateur, raccordé au circuit de sécurité du brûleur.',
  },
  'air.draught-left': {
    title: 'Tirage plus fort que la dépression du local',
    asks: 'Tout le tirage que le conduit peut donner par temps doux dépasse la dépression que ventilateurs et brûleurs causent dans le local.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Ouvertures plus grandes, ventilateurs déplacés, conduit plus haut, ou un appareil à conduit étanche.',
  },
  'air.vent-category': {
    title: 'Conduit fait pour la catégorie',
    asks: 'La catégorie I évacue par tirage ; II, III et IV par un conduit étanche, car leurs gaz sont humides, sous pression, ou les deux.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Le conduit que les instructions nomment pour la catégorie.',
  },
  'air.vent-listed': {
    title: 'Conduit étanche homologué',
    asks: 'Le conduit étanche est homologué pour la catégorie et nommé par les instructions du fabricant, d’une seule marque.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Un système homologué ; jamais de pièces de deux marques assemblées.',
  },
  'air.vent-material': {
    title: 'Matériau qui supporte les gaz de combustion',
    asks: 'Les gaz humides sortent par de l’acier inoxydable ou un plastique que nomme le fabricant, les gaz secs sous pression par de l’acier inoxydable : l’acide ronge zinc et aluminium, la chaleur ramollit le plastique.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Un conduit du matériau que nomment les instructions.',
  },
  'air.vent-not-wide': {
    title: 'Conduit pas trop large',
    asks: 'La section du conduit est au plus sept fois celle de la buse ; plus large, les gaz refroidissent et l’eau en dégoutte.',
    mend: 'Un conduit plus étroit, ou une gaine.',
  },
  'air.chimney-area': {
    title: 'Cheminée de bonne section',
    asks: 'Une cheminée pour un appareil à coupe-tirage a au moins la section de sa buse et au plus sept fois celle-ci. Aucun tableau ici ne dimensionne la maçonnerie ; faire examiner la gaine avant tout raccordement.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Une gaine homologuée de la taille que donne son tableau.',
  },
  'air.vent-length': {
    title: 'Conduit étanche pas trop long',
    asks: 'Chaque coude compté comme le dit le fabricant, le conduit étanche n’est pas plus long qu’il ne le permet.',
    mend: 'Un parcours plus court, moins de coudes, ou le diamètre suivant si le fabricant en donne un.',
  },
  'air.connector-length': {
    title: 'Conduit de raccordement pas trop long',
    asks: 'Là où aucun tableau du code ne dimensionne le conduit, son parcours horizontal est au plus 75 % de sa hauteur à simple paroi et 100 % en type B.',
    mend: 'L’appareil plus près de son conduit, ou un conduit plus haut.',
  },
  'air.vent-slope': {
    title: 'Parties horizontales en pente',
    asks: 'Les parties horizontales montent de 1/4 po par pied vers le conduit ; celles d’un appareil à condensation redescendent vers lui, pour que rien n’y stagne.',
    mend: 'Le suspendre à nouveau, un support à chaque joint.',
  },
  'air.single-wall-warm': {
    title: 'Simple paroi au chaud',
    asks: 'Aucune partie à simple paroi ne passe dehors, dans un grenier ou dans un espace non chauffé.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Du type B à cet endroit.',
  },
  'air.terminal-under-soffit': {
    title: 'Terminal sous le soffite',
    asks: 'Un terminal mural est au moins aussi loin sous un soffite ou un avant-toit que le veut l’usage ; le chiffre du fabricant prévaut.',
    mend: 'Un terminal plus bas, ou un par le toit.',
  },
  'air.terminal-under-deck': {
    title: 'Terminal sous une terrasse',
    asks: 'Un terminal n’est sous une terrasse que si elle est ouverte sur deux côtés et à la distance que donne le code.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Sortir le terminal de dessous.',
  },
  'air.flue-from-next-door': {
    title: 'Gaz de combustion loin du bâtiment voisin',
    asks: 'Un terminal mural est, à l’horizontale, aussi loin d’une ouverture du bâtiment voisin que le code le demande.',
    mend: 'Un autre mur, ou un conduit par le toit.',
  },
  'air.condensate-drained': {
    title: 'Condensat évacué',
    asks: 'Le condensat du chauffe-piscine et du conduit d’évacuation part par un siphon et un drain.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Un siphon, et un drain de plastique en pente sur tout le parcours.',
  },
  'air.condensate-capacity': {
    title: 'Drain suffisant pour le condensat',
    asks: 'Pompe, neutraliseur et drain suffisent au plus grand débit d’eau que les gaz de combustion peuvent laisser à plein débit calorifique.',
    mend: 'Une pompe ou un neutraliseur plus grand, ou un par appareil.',
  },
  'air.condensate-neutral': {
    title: 'Condensat neutralisé',
    asks: 'Le condensat acide est neutralisé avant de toucher métal, béton, fosse septique ou sol.',
    mend: 'Un neutraliseur, sa pierre renouvelée selon son fabricant.',
  },
  'air.condensate-frost': {
    title: 'Condensat à l’abri du gel',
    asks: 'Siphon et drain ne gèlent pas tant que le chauffe-piscine sert ; un siphon gelé noie le brûleur ou laisse passer les gaz de combustion.',
    mend: 'Un câble chauffant à thermostat, de l’isolant, ou un drain intérieur ; vidangé à l’arrêt de saison.',
  },
  'air.condensate-off-walkway': {
    title: 'Pas de gouttes sur un passage public',
    asks: 'Un terminal de catégorie II ou IV n’est pas au-dessus d’un passage public : ce qui goutte y gèle.',
    mend: 'Un autre mur, ou un terminal par le toit.',
  },
  'air.one-opening-room': {
    title: 'Espace pour la méthode d’une ouverture',
    asks: 'Où une seule ouverture amène l’air, l’appareil est à 1 po de tout ce qui est à côté et derrière et à 6 po de ce qui est devant.',
    mend: 'Deux ouvertures, ou déplacer l’appareil.',
  },
  'air.opening-low-band': {
    title: 'Ouverture basse à sa hauteur',
    asks: 'Au-dessus de 400 000 Btu/h (117 kW), l’ouverture d’alimentation en air, ou le bout de son conduit, est de 6 à 18 po au-dessus du plancher.',
    mend: 'Déplacer l’ouverture, ou amener son conduit à cette hauteur.',
  },
  'air.intake-high': {
    title: 'Prise d’air au-dessus du sol',
    asks: 'Le côté le plus bas de la prise extérieure est à 12 po ou plus du sol : ni neige ni feuilles ne doivent la fermer.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Une prise plus haute, ou un capuchon qui prend l’air plus haut.',
  },
  'air.duct-alone': {
    title: 'Conduit d’air propre',
    asks: 'Un conduit d’air dessert un local, et l’ouverture haute et la basse ont chacune le sien.',
    mend: 'Laisser le chauffe-piscine à l’arrêt jusqu’à la correction. Un conduit pour chacune.',
  },
  'air.duct-rises': {
    title: 'Conduit haut sans pente vers l’extérieur',
    asks: 'Un conduit horizontal de l’ouverture haute ne descend pas vers l’extérieur : l’air chaud y resterait.',
    mend: 'Le suspendre de niveau ou montant vers l’extérieur.',
  },
};
