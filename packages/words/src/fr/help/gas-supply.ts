/** Of the gas supply: meter or tank, regulator, test and purge. */
export const HELP_GAS_SUPPLY: Readonly<Record<string, string>> = {
  'gasSupply.fuel':
    'Demander au propriétaire, lire la facture, chercher un compteur (naturel) ou un réservoir (propane).',
  'gasSupply.heatingValue':
    'Sur la facture ou le site du distributeur : chaleur par pied cube ou mètre cube.',
  'gasSupply.specificGravity': 'Demander au distributeur, ou laisser vide : le gaz comparé à l’air.',
  'gasSupply.setPressure':
    'Manomètre à la première prise après le régulateur, le gaz circulant : allumer un appareil. Prises d’essai : personnes titulaires seulement.',
  'gasSupply.lockUpPressure':
    'À la même prise, tout éteint : attendre une minute, puis lire. Prises d’essai : personnes titulaires seulement.',
  'gasSupply.regulatorCapacity':
    'Sur l’étiquette du régulateur de service ou de deuxième étage, ou dans sa table.',
  'gasSupply.regulatorDroop': 'Dans la table du régulateur : de combien sa sortie baisse à ce débit.',
  'gasSupply.meterBadge': 'Sur la plaque du compteur : pieds cubes ou mètres cubes à l’heure.',
  'gasSupply.meterBadgeDrop': 'À côté de la capacité sur la plaque : la pression perdue à ce débit.',
  'gasSupply.meterCompensated': 'La plaque ou l’index dit qu’il compte un volume corrigé.',
  'gasSupply.designDrop':
    'La chute pour laquelle la conduite est calculée selon le code, du plan ou de l’inspecteur.',
  'gasSupply.existingLoad':
    'Additionner les plaques de tout ce qui brûle du gaz : fournaise, chauffe-eau, cuisinière, sécheuse.',
  'gasSupply.existingLoadAt': 'Le nœud où part cette charge. Laissé vide : au bout du premier tronçon.',
  'gasSupply.tankDiameter': 'Mesurer en travers du bout du réservoir de propane, ou lire sa plaque.',
  'gasSupply.tankLength': 'Mesurer le réservoir de propane d’un bout à l’autre, ou lire sa plaque.',
  'gasSupply.tankFill':
    'Jusqu’où on le laisse descendre avant de le remplir : demander au propriétaire ou au fournisseur.',
  'gasSupply.testPressure': 'Ce que demande le code du lieu, ou ce que le manomètre a montré à l’essai.',
  'gasSupply.testDuration': 'Combien de temps la tuyauterie a été tenue à cette pression.',
  'gasSupply.testGaugeRange': 'Le plus grand chiffre du cadran du manomètre d’essai.',
  'gasSupply.testGas': 'Air ou gaz inerte. Jamais d’oxygène.',
  'gasSupply.leaks':
    'Savonner chaque joint ou passer un détecteur, le gaz ouvert. Une fuite : fermer le gaz d’abord.',
  'gasSupply.csstBonded': 'Trouver le collier et le fil du premier raccord du tube ondulé à la terre.',
  'gasSupply.csstBondConductor': 'Lire le calibre imprimé sur ce fil, ou le mesurer.',
  'gasSupply.csstBondLength': 'Suivre ce fil du collier à la terre et le mesurer.',
  'gasSupply.purgeWay': 'Par où sortira l’air de la tuyauterie neuve. Dehors est le plus simple.',
  'gasSupply.purgeInert': 'De l’azote ou un autre gaz inerte chasse l’air avant l’arrivée du gaz.',
  'gasSupply.purgeIgnition': 'De la sortie du gaz à la flamme, l’étincelle ou le moteur le plus proche.',
  'gasSupply.purgeOpenings': 'De là à la fenêtre ou la porte la plus proche d’un bâtiment.',
  'gasSupply.purgeIntake': 'De là à la prise d’air à ventilateur la plus proche.',
  'gasSupply.purgeGas': 'Ce qu’indique là un détecteur de gaz combustible à la fin.',
  'gasSupply.price':
    'De la dernière facture : le montant payé divisé par l’énergie, taxes et livraison comprises.',
  'gasSupply.note': 'Tout ce que le suivant devrait savoir de l’alimentation.',
};
