/** Of test kit and analyser. */
export const HELP_TESTS: Readonly<Record<string, string>> = {
  'waterTests.basin': 'El vaso del que se tomó la muestra.',
  'waterTests.ph': 'Kit de prueba, a la hondura del codo, lejos de un retorno.',
  'waterTests.calcium': 'Kit de prueba: dureza cálcica, como carbonato de calcio.',
  'waterTests.alkalinity': 'Kit de prueba: alcalinidad total, como carbonato de calcio.',
  'waterTests.dissolvedSolids': 'Un medidor en el agua, o la pantalla de un sistema de sal.',
  'waterTests.cyanuricAcid': 'Kit de prueba: estabilizador, por lo turbio del tubo.',
  'waterTests.freeChlorine': 'Kit de prueba: cloro libre, no total.',
  'flueTests.heater': 'El calentador de cuyos humos se trata.',
  'flueTests.oxygen':
    'Analizador en los humos antes de que el aire los diluya, tras diez minutos de fuego estable.',
  'flueTests.carbonDioxide': 'El mismo lugar, si el analizador da dióxido de carbono en su lugar.',
  'flueTests.carbonMonoxide': 'El mismo lugar, tal como se lee, sin corregir.',
  'flueTests.stackTemperature': 'La sonda del analizador en el centro de la salida.',
  'flueTests.airTemperature': 'Un termómetro donde el quemador toma su aire.',
};
