/** Of test kit and analyser. */
export const HELP_TESTS: Readonly<Record<string, string>> = {
  'waterTests.basin': 'Le bassin où l’échantillon a été pris.',
  'waterTests.ph': 'Trousse d’analyse, à profondeur du coude, loin d’un retour.',
  'waterTests.calcium': 'Trousse d’analyse : dureté calcique, en carbonate de calcium.',
  'waterTests.alkalinity': 'Trousse d’analyse : alcalinité totale, en carbonate de calcium.',
  'waterTests.dissolvedSolids': 'Un appareil dans l’eau, ou l’afficheur d’un système au sel.',
  'waterTests.cyanuricAcid': 'Trousse d’analyse : stabilisant, selon le trouble du tube.',
  'waterTests.freeChlorine': 'Trousse d’analyse : chlore libre, pas total.',
  'flueTests.heater': 'Le chauffe-piscine dont ce sont les fumées.',
  'flueTests.oxygen':
    'Analyseur dans les fumées avant toute dilution, après dix minutes de feu stable. D’abord la notice du fabricant ; c’est chaud et peut contenir du monoxyde de carbone.',
  'flueTests.carbonDioxide': 'Au même endroit, si l’analyseur donne plutôt le dioxyde de carbone.',
  'flueTests.carbonMonoxide': 'Au même endroit, tel que lu, sans correction.',
  'flueTests.stackTemperature': 'La sonde de l’analyseur au milieu de la sortie.',
  'flueTests.airTemperature': 'Un thermomètre là où le brûleur prend son air.',
  'firingTests.heater': 'L’appareil en feu pendant que tout le reste au gaz est éteint.',
  'firingTests.dial':
    'Le chiffre imprimé sur le cadran d’essai du compteur : gaz par tour, comme 2 pieds cubes.',
  'firingTests.turns':
    'Combien de tours entiers ont été chronométrés. Plus de tours, moins d’erreur : au moins une demi-minute.',
  'firingTests.seconds':
    'Chronomètre, plein feu, rien d’autre en feu. Commencer et finir quand l’aiguille passe le même repère.',
  'firingTests.meterPressure':
    'Manomètre à la sortie du compteur, ou ce que dit le distributeur. Prises d’essai : personnes titulaires seulement.',
  'firingTests.meterTemperature':
    'Thermomètre sur le tuyau au compteur, à l’ombre ; proche de celle de l’air.',
  'firingTests.waterFlow':
    'Débitmètre dans la boucle pendant le feu ; la part qui traverse l’appareil si une dérivation est ouverte.',
  'firingTests.waterIn': 'Thermomètre dans le tuyau avant l’appareil, après dix minutes de feu stable.',
  'firingTests.waterOut': 'Le même thermomètre après l’appareil, lu juste après l’autre.',
};
