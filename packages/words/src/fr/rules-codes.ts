/** Règles des codes qui demandent une chose plutôt qu’un chiffre : tuyauterie de gaz, énergie, chaudières, permis. */
import type { RuleWords } from '../dictionary.ts';

export const RULES_CODES: Readonly<Record<string, RuleWords>> = {
  'gas.design-drop': {
    title: 'Perte de pression de calcul permise par le code',
    asks: 'La perte de pression pour laquelle la tuyauterie est dimensionnée ne dépasse pas ce que le code permet à cette pression d’alimentation.',
    mend: 'Dimensionner les tronçons pour la perte plus petite, ou demander au distributeur une pression plus élevée avec un régulateur de canalisation.',
  },
  'gas.shut-off-accessible': {
    title: 'Robinet d’arrêt de gaz accessible',
    asks: 'Le robinet de gaz propre au chauffe-piscine s’atteint et se tourne sans outil ni échelle, et sans rien déplacer.',
    mend: 'Déplacer le robinet là où la main le trouve tout de suite.',
  },
  'gas.union': {
    title: 'Raccord union après le robinet d’arrêt de gaz',
    asks: 'Un raccord union ou une bride se trouve entre le robinet et le chauffe-piscine, pour que celui-ci se démonte gaz fermé.',
    mend: 'Monter un raccord union juste après le robinet d’arrêt, du côté du chauffe-piscine.',
  },
  'gas.sediment-trap-nipple': {
    title: 'Poche de sédimentation assez longue',
    asks: 'Le mamelon à bouchon de la poche de sédimentation a la longueur que montre la figure du code.',
    mend: 'Monter un mamelon plus long.',
  },
  'gas.csst-bonded': {
    title: 'Tube ondulé relié à la mise à la terre',
    asks: 'Le tube ondulé est relié à la mise à la terre du bâtiment : un coup de foudre proche peut le percer.',
    mend: 'Le faire relier par un électricien titulaire d’une licence, là où le gaz entre dans le bâtiment.',
  },
  'gas.csst-bond-size': {
    title: 'Liaison du tube ondulé assez grosse',
    asks: 'Le conducteur de cette liaison a au moins la grosseur demandée.',
    mend: 'Poser un conducteur plus gros.',
  },
  'gas.csst-bond-length': {
    title: 'Liaison du tube ondulé assez courte',
    asks: 'Le conducteur de cette liaison n’est pas plus long que permis.',
    mend: 'Relier à un point plus proche de la mise à la terre, ou y planter des électrodes jointes à celles du bâtiment.',
  },
  'gas.burial-depth': {
    title: 'Tuyau de gaz assez profond',
    asks: 'Terre et revêtement au-dessus d’un tronçon enterré ont au moins l’épaisseur que demande le code.',
    mend: 'Le poser plus profond, ou le protéger comme l’autorité l’accepte, avant de fermer la tranchée.',
  },
  'gas.plastic-underground': {
    title: 'Tuyau de gaz en plastique seulement dans le sol',
    asks: 'Le polyéthylène est à l’extérieur et dans le sol.',
    mend: 'Remplacer par du métal ce qui est à l’intérieur ou hors du sol.',
  },
  'gas.plastic-risers': {
    title: 'Colonnes du tuyau de gaz en plastique',
    asks: 'Le polyéthylène sort du sol par des colonnes homologuées, en métal au-dessus du sol.',
    mend: 'Monter à chaque bout une colonne faite pour cela.',
  },
  'gas.tracer': {
    title: 'Fil traceur le long du tuyau de gaz en plastique',
    asks: 'Un fil le long du tuyau, les deux bouts hors du sol, permet de le repérer avant que quelqu’un creuse.',
    mend: 'Poser un fil traceur et en sortir les deux bouts avant de fermer la tranchée.',
  },
  'gas.tracer-size': {
    title: 'Fil traceur assez gros',
    asks: 'Le fil traceur a au moins la grosseur demandée.',
    mend: 'Poser un fil plus gros, à isolant pour enfouissement.',
  },
  'gas.test-gas': {
    title: 'Essai de pression à l’air ou au gaz inerte',
    asks: 'L’essai se fait à l’air ou au gaz inerte, jamais à l’oxygène ni au gaz combustible.',
    mend: 'Évacuer sans danger, puis refaire l’essai à l’air ou à l’azote.',
  },
  'gas.no-leak': {
    title: 'Aucune fuite de gaz',
    asks: 'Gaz ouvert, ni savon ni détecteur ne trouvent rien à aucun joint.',
    mend: 'Fermer le gaz et éloigner toute étincelle. Réparer, refaire l’essai, et seulement alors rouvrir.',
  },
  'gas.purge-where': {
    title: 'Air de la tuyauterie neuve évacué sans danger',
    asks: 'Une tuyauterie de grand diamètre ou de haute pression se purge à l’extérieur ; une plus petite, par un brûleur ou sous la garde d’un détecteur.',
    mend: 'Purger à l’extérieur, ou au moins par un brûleur ou avec un détecteur à la sortie tout le temps.',
  },
  'gas.purge-inert': {
    title: 'Gaz inerte avant le gaz combustible dans les gros tuyaux',
    asks: 'Dans un grand réseau, un gaz inerte chasse l’air avant l’arrivée du gaz combustible.',
    mend: 'Purger d’abord à l’azote.',
  },
  'gas.purge-from-ignition': {
    title: 'Sortie de purge loin de tout allumage',
    asks: 'La sortie de la purge est assez loin de tout ce qui peut l’allumer.',
    mend: 'Mener la sortie plus loin.',
  },
  'gas.purge-from-openings': {
    title: 'Sortie de purge loin des ouvertures',
    asks: 'La sortie de la purge est assez loin des fenêtres, des portes et des autres ouvertures.',
    mend: 'Mener la sortie plus loin.',
  },
  'gas.purge-from-intake': {
    title: 'Sortie de purge loin des prises d’air',
    asks: 'La sortie de la purge est assez loin des prises d’air des ventilateurs.',
    mend: 'Mener la sortie plus loin, ou tenir ces ventilateurs à l’arrêt.',
  },
  'gas.purge-end': {
    title: 'Purge jusqu’à ce que le tuyau contienne du gaz combustible',
    asks: 'Une purge s’arrête quand le détecteur montre autant de gaz combustible que le code le demande.',
    mend: 'Purger jusqu’à ce que le détecteur le montre.',
  },
  'gas.permit': {
    title: 'Permis pour les travaux de gaz',
    asks: 'Le permis ou l’avis est demandé avant le début des travaux et accordé avant la pose des tuyaux. Une réparation n’en demande pas ici, sauf s’il en a été inscrit un.',
    mend: 'Demander à l’autorité à l’adresse avant de continuer.',
  },
  'gas.licence': {
    title: 'Licence pour les travaux de gaz',
    asks: 'Qui fait les travaux de gaz a la licence pour cela, en ce lieu et pour ce débit calorifique.',
    mend: 'Laisser les travaux de gaz à une personne titulaire de la licence.',
  },
  'power.permit': {
    title: 'Permis pour les travaux d’électricité',
    asks: 'Le permis ou l’avis est demandé avant le début des travaux et accordé avant tout câblage.',
    mend: 'Demander à l’autorité à l’adresse avant de continuer.',
  },
  'power.licence': {
    title: 'Licence pour les travaux d’électricité',
    asks: 'Qui fait les travaux d’électricité a la licence pour cela en ce lieu.',
    mend: 'Laisser le câblage à un électricien titulaire d’une licence.',
  },
  'place.permit': {
    title: 'Permis de construction ou de mécanique',
    asks: 'Le permis de poser ou de remplacer le chauffe-piscine est demandé avant, et accordé quand on le pose.',
    mend: 'Demander au service des bâtiments à l’adresse avant de continuer.',
  },
  'heat.cover': {
    title: 'Couverture sur l’eau chauffée extérieure',
    asks: 'L’eau chauffée à l’extérieur a une couverture qui retient la vapeur, sauf si sa chaleur vient surtout du soleil ou d’une pompe à chaleur.',
    mend: 'Lui donner une couverture ; rien d’autre n’épargne autant de gaz.',
  },
  'heat.primary-source': {
    title: 'Gaz seulement en appoint d’une autre source de chaleur',
    asks: 'À une piscine ou un spa neufs, le soleil, une pompe à chaleur ou une énergie renouvelable donne la part demandée ; le gaz fait le reste.',
    mend: 'Demander au service des bâtiments quelle première source et quelle exemption valent ici, avant de commander un chauffe-piscine au gaz.',
  },
  'heat.no-pilot': {
    title: 'Pas de veilleuse permanente',
    asks: 'Le brûleur s’allume quand on demande de la chaleur ; aucune flamme ne brûle toute la journée.',
    mend: 'Choisir un chauffe-piscine à allumage électronique.',
  },
  'heat.efficiency-least': {
    title: 'Rendement exigé par la loi',
    asks: 'Le rendement thermique de la plaque signalétique est au moins celui que la loi demande aux chauffe-piscines fabriqués ce jour-là.',
    mend: 'Un chauffe-piscine fabriqué après la hausse de la limite ne peut se vendre au-dessous d’elle : demander au fournisseur.',
  },
  'heat.integrated-efficiency': {
    title: 'Rendement exigé par la loi, sur l’année',
    asks: 'Le rendement thermique intégré, qui compte la veille et l’électricité, est au moins celui que la loi demande à ce débit calorifique.',
    mend: 'Un chauffe-piscine sous la limite ne peut se vendre : demander au fournisseur.',
  },
  'power.off-switch': {
    title: 'Interrupteur pour arrêter le chauffe-piscine',
    asks: 'Un interrupteur extérieur arrête le chauffe-piscine sans toucher à son thermostat. Un disjoncteur seul n’en est pas un.',
    mend: 'Monter un interrupteur sur le chauffe-piscine, ou à côté là où le code le permet.',
  },
  'power.off-switch-distance': {
    title: 'Interrupteur d’arrêt près du chauffe-piscine',
    asks: 'Si l’interrupteur n’est pas sur le chauffe-piscine même, il n’en est pas plus loin que permis.',
    mend: 'Rapprocher l’interrupteur.',
  },
  'power.time-switch': {
    title: 'Chauffe-piscine et pompe sur minuterie',
    asks: 'Chauffe-piscine et pompe marchent et s’arrêtent selon un horaire, sauf si les règles sanitaires font tourner la pompe toute la journée.',
    mend: 'Monter une minuterie, ou régler l’horaire du contrôleur.',
  },
  'water.solar-pipe': {
    title: 'Place pour le solaire plus tard',
    asks: 'Entre filtre et chauffe-piscine, assez de tuyau reste libre pour y joindre plus tard des capteurs, ou des raccords sont déjà là.',
    mend: 'Laisser cette longueur de tuyau libre avant de raccorder le chauffe-piscine.',
  },
  'water.feeder-order': {
    title: 'Doseur après le chauffe-piscine et le clapet',
    asks: 'Les produits chimiques entrent en dernier dans le circuit, après le chauffe-piscine et le clapet de non-retour, pour que le chlore concentré n’atteigne jamais l’échangeur.',
    mend: 'Déplacer le doseur après le clapet de non-retour, en dernier avant la piscine.',
  },
  'water.bypass-line': {
    title: 'Conduite de dérivation d’un chauffe-piscine qui n’en a pas',
    asks: 'Un chauffe-piscine sans dérivation intégrée a une conduite avec vanne entre son entrée et sa sortie.',
    mend: 'Monter une conduite de dérivation avec sa vanne.',
  },
  'water.boiler-inspection': {
    title: 'Inspection des chaudières',
    asks: 'Au-dessus des limites de la loi de l’État, le chauffe-piscine est une chaudière : sa pose s’annonce à l’inspection, qui vient la voir.',
    mend: 'Demander au bureau des chaudières de l’État avant de commander.',
  },
  'water.relief-stamp': {
    title: 'Soupape de sûreté faite pour chaudières',
    asks: 'La soupape d’un chauffe-piscine qui compte comme chaudière porte l’estampille des chaudières à eau chaude.',
    mend: 'Monter une soupape à cette estampille, de même tarage et d’au moins la capacité.',
  },
  'water.flow-proving': {
    title: 'Gros chauffe-piscine au débit prouvé',
    asks: 'À partir du débit calorifique nommé, un chauffe-piscine à tubes ou à serpentins ne brûle que si un contact sent le débit ; la pression seule ne suffit pas.',
    mend: 'Monter un contrôleur de débit en série avec le pressostat, comme le fabricant le permet.',
  },
  'place.listed': {
    title: 'Chauffe-piscine homologué pour piscines et spas',
    asks: 'Le chauffe-piscine porte la marque d’une homologation à la norme des chauffe-piscines au gaz.',
    mend: 'Ne pas le poser avant que l’autorité l’ait accepté.',
  },
  'place.controls-barred': {
    title: 'Commandes hors de portée des clients',
    asks: 'À une piscine ouverte à d’autres, seuls les responsables atteignent les commandes du chauffe-piscine.',
    mend: 'Verrouiller les commandes ou le local.',
  },
  'place.finned-tube-enclosure': {
    title: 'Chauffe-piscine à tubes à ailettes à l’intérieur, dans son enceinte',
    asks: 'Sous un toit, un chauffe-piscine à tubes à ailettes est dans un local ou une enceinte qui ne sert qu’à lui, à l’écart des gens et du chlore.',
    mend: 'Demander à l’autorité du gaz de la province ce que doit être l’enceinte avant de l’y poser.',
  },
  'place.yearly-service': {
    title: 'Chauffe-piscine à tubes à ailettes à l’intérieur, entretenu chaque année',
    asks: 'Sous un toit, un chauffe-piscine à tubes à ailettes est entretenu au moins une fois l’an, et le propriétaire le sait.',
    mend: 'Convenir d’une visite annuelle et l’inscrire à la remise.',
  },
  'place.wall-mounted': {
    title: 'Chauffe-piscine mural bien fixé',
    asks: 'Un chauffe-piscine accroché à un mur y est solidement fixé.',
    mend: 'Le fixer avec les supports du fabricant à ce qui peut le porter.',
  },
};
