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
  'flueTests.oxygen': 'Analyseur dans les fumées avant toute dilution, après dix minutes de feu stable.',
  'flueTests.carbonDioxide': 'Au même endroit, si l’analyseur donne plutôt le dioxyde de carbone.',
  'flueTests.carbonMonoxide': 'Au même endroit, tel que lu, sans correction.',
  'flueTests.stackTemperature': 'La sonde de l’analyseur au milieu de la sortie.',
  'flueTests.airTemperature': 'Un thermomètre là où le brûleur prend son air.',
};
