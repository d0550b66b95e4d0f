/** What test kit and analyser say. */
export const READINGS_TESTS: Readonly<Record<string, string>> = {
  waterTests: 'analyse d’eau',
  'waterTests.basin': 'bassin de l’échantillon',
  'waterTests.ph': 'pH',
  'waterTests.calcium': 'dureté calcique',
  'waterTests.alkalinity': 'alcalinité totale',
  'waterTests.dissolvedSolids': 'solides dissous',
  'waterTests.cyanuricAcid': 'acide cyanurique',
  'waterTests.freeChlorine': 'chlore libre',
  flueTests: 'analyse de combustion',
  'flueTests.heater': 'chauffe-piscine analysé',
  'flueTests.oxygen': 'oxygène dans les gaz de combustion',
  'flueTests.carbonDioxide': 'dioxyde de carbone dans les gaz de combustion',
  'flueTests.carbonMonoxide': 'monoxyde de carbone dans les gaz de combustion',
  'flueTests.stackTemperature': 'température des gaz de combustion',
  'flueTests.airTemperature': 'température de l’air au brûleur',
};
