/** Of the water loop: pump, filter, pipes, valves. */
export const HELP_WATER: Readonly<Record<string, string>> = {
  'pumps.name': 'Comme pompe du filtre.',
  'pumps.curve':
    'Dans la notice de la pompe : charge selon le débit à pleine vitesse. Quatre ou cinq points suffisent.',
  'pumps.speedFull': 'La vitesse de cette courbe, imprimée sur elle ou sur le moteur.',
  'pumps.efficiency': 'Du fil à l’eau à son meilleur point, si les données le disent.',
  'pumps.suctionHead': 'Sur sa courbe : charge d’aspiration exigée (NPSH) au plus grand débit.',
  'pumpSpeeds.name': 'À quoi sert cette vitesse : filtrer, chauffer, spa.',
  'pumpSpeeds.speed': 'Sur l’afficheur de la pompe pendant qu’elle tourne ainsi.',
  'pumpSpeeds.heating': 'Le chauffe-piscine peut marcher à cette vitesse.',
  'pumpSpeeds.basins': 'Les bassins que cette vitesse fait circuler. Vide : n’importe lequel.',
  'filters.name': 'Comme filtre à sable.',
  'filters.kind':
    'Celui à sable porte une vanne à plusieurs voies ; celui à cartouche ou à grilles s’ouvre par un collier.',
  'filters.area': 'Sur sa plaque : surface filtrante.',
  'filters.cleanLoss': 'Manomètre avant et après, propre : la différence. Ou de sa courbe.',
  'filters.cleanFlow': 'Le débit auquel cette perte a été lue.',
  'filters.cleanSpeed': 'La vitesse du moteur quand le chiffre propre a été lu.',
  'filters.dirtyRise':
    'De combien le manomètre peut monter au-dessus du propre avant le nettoyage : demander à qui l’entretient.',
  'filters.gaugeClean': 'Le manomètre avant lui juste après le nettoyage, à la même vitesse.',
  'filters.gaugeNow': 'Le manomètre avant lui, tel que trouvé.',
  'filters.speedNow': 'La vitesse du moteur pendant cette lecture.',
  'filters.rateGreatest': 'Sur sa plaque ou dans les règles sanitaires : débit maximal par unité de surface.',
  'waterRuns.name': 'Comment on nommerait cette conduite.',
  'waterRuns.role':
    'Sa place dans le circuit. Suivre l’eau : piscine, pompe, filtre, chauffe-piscine, piscine.',
  'waterRuns.basin': 'Le bassin d’où elle vient ou où elle va.',
  'waterRuns.heater': 'Le chauffe-piscine que sert cette branche.',
  'waterRuns.material': 'Imprimé le long du tuyau : matière et série.',
  'waterRuns.size': 'Imprimé le long du tuyau : sa taille de commerce.',
  'waterRuns.length': 'Le long du tuyau ; les raccords à part. Sous terre : le chemin qu’il doit suivre.',
  'waterRuns.fittings': 'Compter ce qu’on voit ; sous terre, ce qu’il faut pour y arriver.',
  'waterLoop.bypass': 'Y a-t-il une vanne entre le tuyau qui va au chauffe-piscine et celui qui en revient ?',
  'waterLoop.bypassCv': 'Dans les données de cette vanne : coefficient de débit grande ouverte.',
  'waterLoop.bypassOpening': 'Où est sa poignée : rien est fermé, tout est ouvert, moitié est moitié.',
  'waterLoop.bypassCharacter': 'Quel genre de vanne c’est. En piscine, souvent à bille ou à papillon.',
  'waterLoop.manifold':
    'Plusieurs chauffe-piscines : le premier à l’aller revient-il premier (direct) ou dernier (inverse) ?',
  'waterLoop.checkValve': 'Un clapet après le chauffe-piscine, avant tout ce qui dose des produits.',
  'waterLoop.feeder':
    'Où le chlore ou l’acide rejoint le circuit. Avant le chauffe-piscine, il ronge le cuivre.',
  'waterLoop.timer':
    'Une minuterie ou un automate met la pompe et le chauffe-piscine en marche et à l’arrêt.',
  'waterLoop.flowFound':
    'Un débitmètre dans le tuyau de l’ancien appareil, la pompe à la vitesse de chauffe ; ou d’après son propre écart de température. Il tient lieu de circuit jusqu’au relevé de la pompe et des tuyaux.',
  'waterLoop.flowShare':
    'Comment le débit change avec le nouvel appareil à la place de l’ancien : 1 si les deux freinent l’eau autant.',
  'waterLoop.solarPipe': 'Tuyau libre entre filtre et chauffe-piscine, gardé pour du solaire plus tard.',
  'waterLoop.spillwayHeight': 'Du bord du spa à la surface de la piscine.',
  'waterLoop.pumpAbovePool': 'De niveau, de la surface de la piscine au milieu de la pompe.',
  'waterLoop.waterTemperature': 'Thermomètre dans l’eau le jour des lectures.',
  'waterLoop.electricityPrice': 'De la dernière facture, tout compris, divisé par l’énergie.',
};
