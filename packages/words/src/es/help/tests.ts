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
    'Analizador en los humos antes de que el aire los diluya, tras diez minutos de fuego estable. Antes, las instrucciones del fabricante; quema y puede llevar monóxido de carbono.',
  'flueTests.carbonDioxide': 'El mismo lugar, si el analizador da dióxido de carbono en su lugar.',
  'flueTests.carbonMonoxide': 'El mismo lugar, tal como se lee, sin corregir.',
  'flueTests.stackTemperature': 'La sonda del analizador en el centro de la salida.',
  'flueTests.airTemperature': 'Un termómetro donde el quemador toma su aire.',
  'firingTests.heater': 'El calentador que quema mientras está apagado todo lo demás que usa gas.',
  'firingTests.dial':
    'La cifra impresa en la esfera de prueba del medidor: gas por vuelta, como 2 pies cúbicos.',
  'firingTests.turns': 'Cuántas vueltas enteras midió. Más vueltas, menos error: al menos medio minuto.',
  'firingTests.seconds':
    'Cronómetro, calentador a plena llama, nada más encendido. Empiece y termine al pasar la aguja por la misma marca.',
  'firingTests.meterPressure':
    'Manómetro a la salida del medidor, o lo que dice la compañía. Tomas de prueba: solo personal con licencia.',
  'firingTests.meterTemperature':
    'Termómetro en el tubo junto al medidor, a la sombra; se parece a la del aire.',
  'firingTests.waterFlow':
    'Caudalímetro en el circuito mientras quema; la parte que pasa por el calentador si hay derivación abierta.',
  'firingTests.waterIn': 'Termómetro en el tubo antes del calentador, tras diez minutos de llama estable.',
  'firingTests.waterOut': 'El mismo termómetro tras el calentador, leído justo después del otro.',
};
