/** What test kit and analyser say. */
export const READINGS_TESTS: Readonly<Record<string, string>> = {
  waterTests: 'water test',
  'waterTests.basin': 'basin of the sample',
  'waterTests.ph': 'pH',
  'waterTests.calcium': 'calcium hardness',
  'waterTests.alkalinity': 'total alkalinity',
  'waterTests.dissolvedSolids': 'dissolved solids',
  'waterTests.cyanuricAcid': 'cyanuric acid',
  'waterTests.freeChlorine': 'free chlorine',

  flueTests: 'flue test',
  'flueTests.heater': 'heater of the test',
  'flueTests.oxygen': 'oxygen in the flue gas',
  'flueTests.carbonDioxide': 'carbon dioxide in the flue gas',
  'flueTests.carbonMonoxide': 'carbon monoxide in the flue gas',
  'flueTests.stackTemperature': 'temperature of the flue gas',
  'flueTests.airTemperature': 'temperature of the air to the burner',
};
