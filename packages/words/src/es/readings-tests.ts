export const READINGS_TESTS: Readonly<Record<string, string>> = {
  waterTests: 'análisis de agua',
  'waterTests.basin': 'vaso de la muestra',
  'waterTests.ph': 'pH',
  'waterTests.calcium': 'dureza cálcica',
  'waterTests.alkalinity': 'alcalinidad total',
  'waterTests.dissolvedSolids': 'sólidos disueltos',
  'waterTests.cyanuricAcid': 'ácido cianúrico',
  'waterTests.freeChlorine': 'cloro libre',

  flueTests: 'análisis de combustión',
  'flueTests.heater': 'calentador analizado',
  'flueTests.oxygen': 'oxígeno en los gases de combustión',
  'flueTests.carbonDioxide': 'dióxido de carbono en los gases de combustión',
  'flueTests.carbonMonoxide': 'monóxido de carbono en los gases de combustión',
  'flueTests.stackTemperature': 'temperatura de los gases de combustión',
  'flueTests.airTemperature': 'temperatura del aire que va al quemador',
};
