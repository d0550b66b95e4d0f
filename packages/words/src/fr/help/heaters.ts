/** Of a heater: nameplate, instructions, and what is around it. */
export const HELP_HEATERS: Readonly<Record<string, string>> = {
  'heaters.name': 'Un nom court que tous emploient, comme chauffe-piscine de gauche.',
  'heaters.planned': 'Oui pour le chauffe-piscine à installer. Non pour l’ancien qui sera enlevé.',
  'heaters.fuel': 'Sur la plaque, près du débit. Si la plaque et le gaz de la conduite diffèrent, arrêter.',
  'heaters.node':
    'Le nœud de la tuyauterie de gaz auquel il est raccordé. En choisir un ou en nommer un nouveau.',
  'heaters.input':
    'Sur la plaque : débit en Btu/h, souvent selon le gaz et l’altitude. Prendre celui du gaz présent.',
  'heaters.inputLeast':
    'Sur la plaque d’un brûleur modulant ou à deux allures : le débit le plus bas. Rien pour une seule allure.',
  'heaters.efficiency':
    'Sur la plaque ou l’étiquette énergétique : rendement thermique. La puissance divisée par le débit donne le même.',
  'heaters.inletLeast':
    'Sur la plaque : pression d’entrée minimale, au débit nominal. Ce n’est pas la pression à la rampe.',
  'heaters.inletGreatest':
    'Sur la plaque : pression d’entrée maximale. Au-dessus, la vanne de gaz peut ne pas tenir.',
  'heaters.altitudeGreatest':
    'Sur la plaque ou dans la notice : altitude jusqu’à laquelle il marche sans trousse ni autres gicleurs.',
  'heaters.altitudeInput':
    'Certaines plaques donnent un second débit pour l’altitude. À noter seulement s’il vaut pour celle d’ici.',
  'heaters.shutOffDistance':
    'Suivre le tuyau de la vanne du chauffe-piscine au robinet manuel et mesurer le long.',
  'heaters.sedimentTrap':
    'Regarder juste avant l’entrée de gaz : un té avec un mamelon bouché qui pend droit vers le bas.',
  'heaters.flowLeast': 'Dans la notice, parfois sur la plaque : le débit d’eau minimal.',
  'heaters.flowGreatest':
    'Dans la notice : le plus grand débit qui peut y passer. Au-delà, il faut une dérivation.',
  'heaters.loss':
    'Dans la notice : courbe ou tableau de perte de charge selon le débit. Trois ou quatre points suffisent.',
  'heaters.header': 'La taille des raccords d’eau, par son nom. Elle est moulée ou imprimée près d’eux.',
  'heaters.pressureGreatest': 'Sur la plaque : pression de service maximale côté eau.',
  'heaters.riseGreatest':
    'Dans la notice : la plus grande hausse de température permise de l’entrée à la sortie.',
  'heaters.inletWaterLeast':
    'Dans la notice : l’eau la plus froide supportée longtemps. Plus froide, les fumées condensent.',
  'heaters.innerBypass':
    'Certains font recirculer de l’eau à l’intérieur. La notice peut donner la part ; sinon, laisser vide.',
  'heaters.heightAbovePool':
    'De niveau, de la surface de la piscine au collecteur d’eau. Dessous si le collecteur est plus bas.',
  'heaters.switchKind': 'Regarder côté eau : un petit pressostat avec un tube, ou une palette dans le tuyau.',
  'heaters.switchLeast':
    'Dans la notice : la pression la plus basse à laquelle se règle son pressostat d’eau.',
  'heaters.switchGreatest':
    'Dans la notice : la pression la plus haute à laquelle se règle son pressostat d’eau.',
  'heaters.switchDifferential': 'Écart entre la pression où il se ferme et celle, plus basse, où il s’ouvre.',
  'heaters.switchSetting': 'Le cadran du pressostat tel que trouvé. Le noter avant que quelqu’un le tourne.',
  'heaters.volts':
    'Sur la plaque. Beaucoup acceptent deux tensions par un sélecteur : noter celle qui est choisie.',
  'heaters.amperes': 'Sur la plaque : courant de marche en ampères à cette tension.',
  'heaters.runOnLeast':
    'Dans la notice : combien de temps l’eau doit couler après l’arrêt du brûleur. Zéro s’il ne demande rien.',
  'heaters.headerMetal': 'Frapper le collecteur ou y poser un aimant : métal ou plastique ?',
  'heaters.width': 'De la caisse, de gauche à droite vue de face. La mesurer ou la lire sur le dessin.',
  'heaters.depth': 'De la caisse, d’avant en arrière, sans les tuyaux.',
  'heaters.height': 'De la caisse, du pied au dessus, sans le conduit.',
  'heaters.mass': 'Dans la notice ou sur le carton : poids sans eau.',
  'heaters.waterSide': 'Face aux commandes : de quel côté sont les tuyaux d’eau ?',
  'heaters.waterSideMovable': 'La notice dit si le collecteur peut passer de l’autre côté.',
  'heaters.listed': 'Chercher sur la plaque la marque d’un laboratoire d’essais.',
  'heaters.clearanceWater': 'Sur la plaque ou dans la notice : dégagement minimal du côté des tuyaux d’eau.',
  'heaters.clearanceFar': 'Dégagement minimal du côté opposé aux tuyaux d’eau.',
  'heaters.clearanceBack': 'Dégagement minimal à l’arrière, sur la plaque ou dans la notice.',
  'heaters.clearanceFront': 'Dégagement minimal à l’avant. La place pour travailler compte aussi.',
  'heaters.clearanceAbove':
    'Dégagement minimal au-dessus, jusqu’à un avant-toit ou un plafond. Souvent le plus grand.',
  'heaters.soundLevel':
    'Dans les données du fabricant : niveau sonore en décibels. La distance vient ensuite.',
  'heaters.soundDistance': 'La distance pour laquelle ce niveau sonore est donné.',
  'heaters.isolated': 'Des vannes peuvent-elles l’isoler du reste du circuit, avec de l’eau dedans ?',
  'heaters.reliefAsked': 'La plaque ou la notice demande une soupape.',
  'heaters.reliefValve': 'Chercher une soupape sur le chauffe-piscine même, sans robinet entre les deux.',
  'heaters.reliefSet': 'Sur l’étiquette métallique de la soupape : sa pression de réglage.',
  'heaters.reliefCapacity': 'Sur la même étiquette : capacité en Btu/h.',
  'heaters.reliefSteam': 'Sur la même étiquette : vapeur en poids, s’il n’y a pas de Btu/h.',
  'heaters.reliefDischarge':
    'Son tuyau est de pleine taille, ouvert, sans filet au bout et mène là où personne n’est ébouillanté.',
  'heaters.reliefDischargeHeight': 'Du plancher ou du sol jusqu’au bout de ce tuyau.',
  'heaters.shutOffAccessible': 'On atteint et tourne son robinet de gaz sans rien déplacer ni démonter.',
  'heaters.gasUnion':
    'Un raccord union ou une bride entre ce robinet et le chauffe-piscine, pour pouvoir l’enlever.',
  'heaters.trapNipple': 'Longueur du mamelon bouché sous le té de la poche de sédimentation.',
  'heaters.ignition':
    'Une étincelle ou une surface chaude est électronique. Une petite flamme de jour comme de nuit est une veilleuse.',
  'heaters.made':
    'Sur la plaque, en année et mois. Parfois caché dans le numéro de série : demander au fabricant.',
  'heaters.integratedEfficiency':
    'Sur l’étiquette énergétique des plus récents : rendement thermique intégré.',
  'heaters.offSwitch': 'Un interrupteur qui l’arrête sans toucher au thermostat : où ?',
  'heaters.offSwitchDistance': 'Du chauffe-piscine à cet interrupteur, s’il est à côté.',
  'heaters.reliefStamp': 'Sur l’étiquette de la soupape : les lettres du code des chaudières.',
  'heaters.controlsBarred': 'Les baigneurs n’atteignent pas ses commandes : cadenas, clôture ou local.',
  'heaters.exchanger': 'Des tubes à fines ailettes, ou autre chose. La notice le montre.',
  'heaters.yearlyService': 'Une personne qualifiée l’entretient une fois l’an, et le propriétaire le sait.',
  'heaters.venting':
    'Extérieur : les fumées sortent en haut de la caisse. Sinon, regarder le conduit et le ventilateur.',
};
