/** Of the flue gas and its way out: plate of the heater, sealed vents, chimneys, condensate, shared vents. */
export const HELP_VENTS: Readonly<Record<string, string>> = {
  'heaters.ventCategory':
    'Sur la plaque : un chiffre romain, de I à IV. II, III et IV demandent un conduit étanche de leur genre.',
  'heaters.flueOutlet': 'Mesurer l’intérieur de la buse ou du coupe-tirage, appareil froid.',
  'heaters.stackTemperature':
    'Dans la notice : température des fumées à la puissance nominale. Ce qui est mesuré va aux essais des fumées.',
  'heaters.ventLengthGreatest':
    'Dans le tableau des conduits de la notice, pour ce diamètre. Les coudes y comptent comme longueur.',
  'heaters.ventElbow': 'Dans le même tableau : la longueur qu’un coude de 90° ôte au plus long conduit.',
  'spots.openingScreen': 'Mesurer entre deux fils du grillage ou lire son étiquette. Zéro sans grillage.',
  'spots.intakeHeight': 'Du sol, en pensant à la plus haute neige, au bas de la prise d’air extérieure.',
  'spots.ductAlone':
    'Suivre chaque gaine d’air d’un bout à l’autre : elle ne sert que ce local, et une seule ouverture.',
  'spots.ductRises':
    'Poser un niveau sur la gaine de l’ouverture haute : l’air chaud ne doit pas descendre pour sortir.',
  'spots.dryerAir':
    'Sur la plaque ou dans la notice de la sécheuse ; les additionner. À laisser vide s’il n’y en a pas dans le local.',
  'spots.hoodAir':
    'Sur la plaque de la hotte, à sa plus grande vitesse ; les additionner. À laisser vide si aucune ne donne sur le local.',
  'spots.supplyInterlock':
    'Arrêter le ventilateur qui amène l’air : les brûleurs doivent s’éteindre. À essayer avec la notice du fabricant en main.',
  'spots.ventMaterial':
    'Imprimé le long du tuyau. Seul un matériau que nomme la notice de l’appareil peut rester.',
  'spots.ventListed':
    'L’étiquette du tuyau nomme la catégorie et le laboratoire ; la notice, la marque. Les deux doivent s’accorder.',
  'spots.ventSlope':
    'Niveau et ruban sur une partie horizontale : montée sur parcours, comme 1/4 po par pied. À condensation : retour vers l’appareil.',
  'spots.singleWallCold':
    'Suivre le tuyau : une partie à simple paroi passe-t-elle dehors, sous un comble ou dans un espace non chauffé ?',
  'spots.chimneyArea':
    'Dans la gaine, d’après le plan ou par la trappe, tout éteint et froid. Faire d’abord inspecter une vieille cheminée.',
  'spots.condensateDrain':
    'Chercher sous l’appareil et le conduit un tuyau avec siphon : coule-t-il vers un drain, ou une pompe le relève-t-elle ?',
  'spots.condensateNeutral':
    'Chercher une cartouche de pierre dans le drain, ou un drain qui supporte l’acide jusqu’à l’égout public.',
  'spots.condensateFrost': 'Siphon et tuyau sont là où il ne gèle pas, chauffés, ou vidés avant le froid.',
  'spots.condensateCapacity': 'La plus petite de trois plaques : pompe à sa hauteur, neutraliseur, drain.',
  'spots.commonFittings': 'Compter chaque coude de la partie que partagent tous les appareils.',
  'spots.commonManifold':
    'Les raccords se rejoignent-ils dans un tuyau horizontal avant que le conduit commun monte ?',
  'spots.terminalSoffit': 'Ruban du haut de la sortie jusqu’au soffite ou au débord.',
  'spots.terminalDeck':
    'Regarder au-dessus de la sortie : y a-t-il une terrasse, et est-ce ouvert de deux côtés dessous ?',
  'spots.terminalDeckGap': 'Ruban du haut de la sortie jusqu’au dessous de cette terrasse.',
  'spots.adjacentOpening':
    'À l’horizontale, de la sortie à la fenêtre, porte ou prise la plus proche du bâtiment voisin. De son côté, au laser ou sur plan.',
};
