/** Of the circuit and the bonding. */
export const HELP_POWER: Readonly<Record<string, string>> = {
  'circuits.heater': 'Le chauffe-piscine que ce circuit alimente.',
  'circuits.phases': 'Une phase dans une maison ; trois dans certains bâtiments publics.',
  'circuits.selector':
    'Couper le courant d’abord. Derrière le couvercle, la fiche ou l’interrupteur près du transformateur.',
  'circuits.voltsIdle':
    'Personnes qualifiées seulement. Multimètre au chauffe-piscine, pompe et chauffe-piscine arrêtés.',
  'circuits.voltsRunning':
    'Personnes qualifiées seulement. Les mêmes bornes, pompe et chauffe-piscine en marche.',
  'circuits.runningCurrent':
    'Pince autour d’un conducteur du circuit, les deux en marche. Pièces sous tension : personnes qualifiées seulement.',
  'circuits.startCurrent':
    'La pointe à la pince au démarrage de la pompe ; utiliser sa mémoire du maximum. Pièces sous tension : personnes qualifiées seulement.',
  'circuits.controlVolts': 'Personnes qualifiées seulement. Au secondaire du transformateur de commande.',
  'circuits.breaker': 'Le chiffre sur la manette du disjoncteur au panneau.',
  'circuits.otherLoad': 'Tout le reste derrière le même disjoncteur : additionner les plaques.',
  'circuits.metal': 'Le cuivre est rougeâtre, l’aluminium argenté. Imprimé aussi sur la gaine.',
  'circuits.conductor': 'Imprimé sur l’isolant : le calibre des conducteurs.',
  'circuits.insulation': 'Imprimé sur l’isolant : sa température nominale.',
  'circuits.terminals':
    'Sur les bornes ou dans le couvercle du panneau ; le plus bas des deux bouts. Pièces sous tension : personnes qualifiées seulement.',
  'circuits.ambient': 'L’air le plus chaud traversé par les fils : un grenier, un mur au soleil.',
  'circuits.inRaceway': 'Fils porteurs de courant dans le même conduit, sans les mises à la terre.',
  'circuits.length': 'Le long du fil, du panneau au chauffe-piscine, montées et descentes comprises.',
  'circuits.equipmentGround': 'Le calibre du fil vert ou nu qui suit le circuit.',
  'circuits.connection': 'Câblage fixe, cordon avec fiche, ou rallonge.',
  'circuits.gfci': 'Un bouton d’essai au disjoncteur ou à la prise. Appuyer : il doit déclencher.',
  'circuits.disconnectInSight': 'Du chauffe-piscine, on voit et on atteint son sectionneur.',
  'circuits.disconnectDistance': 'À l’horizontale, du sectionneur à la paroi intérieure de la piscine.',
  'circuits.barrier':
    'Une clôture ou un mur permanent entre la piscine et le chauffe-piscine et son sectionneur.',
  'circuits.bonded': 'Suivre le fil de cuivre nu de la cosse extérieure à la piscine.',
  'circuits.bondConductor': 'Le calibre de ce fil nu.',
  'circuits.bondStrands': 'Un seul gros fil est massif, plusieurs fins sont toronnés.',
  'circuits.burialMethod': 'Ce qui est enterré : câble seul, conduit métallique, conduit de plastique.',
  'circuits.burialPlace': 'Ce qu’il y a au-dessus : pelouse, dalle, allée.',
  'circuits.cover': 'De son dessus à la surface.',
  'circuits.burialFromPool':
    'À l’horizontale, du câblage enterré à la paroi intérieure ; zéro s’il passe dessous.',
  'circuits.controlRoute':
    'Comment les fils à basse tension entrent dans le chauffe-piscine : jamais avec ceux de puissance.',
  'circuits.controlSpacing': 'Entre le câble à basse tension et ceux de puissance.',
  'circuits.remote': 'Chercher un câble de l’automate de la piscine et compter ses fils.',
  'circuits.remoteDistance': 'De la commande à distance à la paroi intérieure de la piscine.',
  'circuits.localLimit': 'Son propre thermostat est réglé, et rien demandé d’ailleurs ne le dépasse.',
  'circuits.interlocked': 'Arrêter la pompe : le chauffe-piscine doit perdre le courant ou l’appel.',
  'circuits.runOn': 'Arrêter le brûleur et chronométrer la suite de la pompe.',
  'bonding.perimeter': 'Ce qui relie le sol autour de la piscine. Existant si le sol n’est pas ouvert.',
  'bonding.points': 'Compter les endroits où l’anneau ou le treillis est joint à l’acier.',
  'bonding.width': 'Jusqu’où le sol relié s’étend de la paroi intérieure.',
  'bonding.gridPitch': 'Entre deux fils du treillis de cuivre.',
  'bonding.ringDistance': 'De l’anneau de cuivre à la paroi intérieure.',
  'bonding.ringDepth': 'À quelle profondeur est l’anneau sous le sol de fondation.',
  'bonding.waterContact':
    'Métal relié touchant l’eau : échelle, luminaire, plaque dans l’écumoire. Additionner sa surface.',
  'bonding.tingle':
    'Demander : quelqu’un a-t-il senti un picotement dans l’eau ou à une rampe ? Oui : tous dehors, courant coupé, appeler un électricien.',
};
