/** Of the gas piping and what hangs on it. */
export const HELP_GAS_PIPING: Readonly<Record<string, string>> = {
  'gasSegments.name': 'Comment on nommerait ce bout de tuyau, comme compteur au premier té.',
  'gasSegments.from': 'Le nœud le plus près du compteur ou du réservoir.',
  'gasSegments.to': 'Le nœud le plus éloigné.',
  'gasSegments.material': 'Acier noir ou galvanisé, cuivre, tube ondulé jaune, ou plastique sous terre.',
  'gasSegments.size':
    'Par son nom de commerce, marqué sur le tuyau ou le raccord. Le tube ondulé porte son EHD sur la gaine.',
  'gasSegments.length': 'Le long du tuyau, de nœud en nœud ; les raccords se comptent à part.',
  'gasSegments.fittings':
    'Les compter en suivant le tuyau. Un té compte tout droit ou vers la branche, selon le gaz.',
  'gasSegments.rise': 'De combien l’autre bout est plus haut. Cela compte dans les bâtiments élevés.',
  'gasSegments.where': 'Où il passe. En plusieurs endroits : le plus profond.',
  'gasSegments.cover':
    'Du dessus du tuyau à la surface. Sonder où c’est permis, sinon demander à qui l’a posé.',
  'gasSegments.risers':
    'Le plastique ne sort pas nu du sol : chercher une colonne montante métallique faite pour cela.',
  'gasSegments.tracer': 'Un fil le long du tuyau de plastique remonte aux deux bouts.',
  'gasSegments.tracerSize': 'Le calibre imprimé sur ce fil.',
  'gasSegments.planned': 'Oui pour un tuyau à poser, non pour celui qui est là.',
  'gasRegulators.name': 'Comme régulateur de ligne près de l’équipement.',
  'gasRegulators.from': 'Le nœud à son entrée. Une flèche sur le corps montre le sens.',
  'gasRegulators.to': 'Le nœud à sa sortie.',
  'gasRegulators.setPressure':
    'Manomètre après lui, le gaz circulant, ou le chiffre de son étiquette. Prises d’essai : personnes titulaires seulement.',
  'gasRegulators.lockUpPressure': 'Après lui, tout éteint. Prises d’essai : personnes titulaires seulement.',
  'gasRegulators.capacity': 'De sa table, à la pression d’entrée qu’il a ici.',
  'gasRegulators.droop': 'De sa table : de combien sa sortie baisse à ce débit.',
  'gasRegulators.designDrop': 'La chute pour laquelle la conduite qui suit est calculée.',
  'gasAppliances.name': 'Ce que c’est : fournaise, chauffe-eau, cuisinière, barbecue.',
  'gasAppliances.node': 'Le nœud de la tuyauterie auquel il est raccordé.',
  'gasAppliances.input': 'Sur sa plaque : le débit le plus grand.',
  'gasAppliances.least': 'Sur sa plaque : pression d’entrée minimale.',
};
