/** Water in pipes, fittings, pump, valves and heater. */
export const FORMULAS_WATER: Readonly<Record<string, string>> = {
  // Pipe and fittings.
  'water.velocity': 'Velocidad en la tubería',
  'water.flow-at-velocity': 'Caudal a esta velocidad',
  'water.reynolds': 'Número de Reynolds del agua',
  'water.friction-factor': 'Factor de fricción de la pared del tubo',
  'water.complete-turbulence': 'Factor de fricción con turbulencia completa',
  'water.darcy-loss': 'Pérdida de carga en un tubo, Darcy–Weisbach',
  'water.darcy-flow': 'Caudal con esta pérdida de carga, Darcy–Weisbach',
  'water.hazen-williams-loss': 'Pérdida de carga en un tubo, Hazen–Williams',
  'water.hazen-williams-flow': 'Caudal con esta pérdida de carga, Hazen–Williams',
  'water.fitting-loss': 'Pérdida de carga en accesorios',
  'water.loss-coefficient': 'Coeficiente de pérdida K de un accesorio',
  'water.equivalent-length': 'Longitud equivalente de un accesorio',
  'water.k-of-length': 'Coeficiente de pérdida K de una longitud equivalente',
  'water.expansion-k': 'Coeficiente de pérdida K de un ensanchamiento',
  'water.contraction-k': 'Coeficiente de pérdida K de un estrechamiento',
  'water.device-loss': 'Pérdida de carga en filtro, calentador u otra pieza',
  'water.loss-curve': 'Pérdida de carga, leída de su curva',

  // Valves.
  'water.valve-drop': 'Caída de presión de una válvula',
  'water.valve-flow': 'Caudal por una válvula',
  'water.coefficient-for-duty': 'Coeficiente de caudal que necesita una válvula',
  'water.k-of-coefficient': 'Coeficiente de pérdida K de un coeficiente de caudal',
  'water.coefficient-of-k': 'Coeficiente de caudal de un coeficiente de pérdida K',
  'water.valve-coefficient': 'Coeficiente de caudal con esta abertura',

  // Pump.
  'water.affinity-flow': 'Caudal a otra velocidad',
  'water.affinity-head': 'Altura manométrica a otra velocidad',
  'water.affinity-power': 'Potencia a otra velocidad',
  'water.pump-head-at-speed': 'Altura manométrica de la bomba a esta velocidad y caudal',
  'water.pump-curve': 'Altura manométrica de la bomba, leída de su curva',
  'water.total-head': 'Altura manométrica que da la bomba, según sus manómetros',
  'water.hydraulic-power': 'Potencia dada al agua',
  'water.drive-power': 'Potencia que toma la bomba',
  'water.npsh-available': 'NPSH disponible, succión sobre la ebullición',

  // Heater.
  'water.temperature-rise': 'Salto de temperatura en el calentador',
  'water.heat-carried': 'Calor que se lleva el agua',
  'water.flow-for-rise': 'Caudal para este salto de temperatura',
  'water.exchanger-inlet': 'Temperatura del agua que entra al intercambiador',
  'water.recirculation-for-inlet':
    'Parte del agua de salida que se debe mezclar para esta temperatura de entrada',

  // Pool, heights and pressures.
  'water.static-pressure': 'Presión de una columna de agua',
  'water.static-height': 'Altura de la columna para esta presión',
  'water.turnover': 'Tiempo de recirculación',
  'water.flow-for-turnover': 'Caudal para este tiempo de recirculación',
  'water.spill-head': 'Lámina de agua sobre el vertedero',
  'water.surge-head': 'Golpe de ariete si el caudal se detiene de golpe',
  'water.critical-closure': 'Tiempo de cierre de una válvula hasta el golpe de ariete completo',
  'water.wave-speed': 'Velocidad de la onda de presión',
  'water.point-pressure': 'Presión que siente aquí un manómetro o presostato',

  // States of the loop.
  'water.speed-ratio': 'Velocidad sobre la de la curva',
  'water.filter-loading': 'Pérdida del filtro, sobre la de uno limpio',
  'water.gauge-over-drawing':
    'Lo que marca el manómetro en limpio, sobre lo que marcaría el circuito dibujado',
  'water.shut-off-head': 'Altura manométrica de la bomba contra una válvula cerrada',
  'water.coldest-start': 'Agua más fría al inicio',
  'water.bypass-clean': 'Derivación (bypass) con filtro limpio, velocidad {speed}, {basin}',
  'water.bypass-dirty': 'Derivación (bypass) con filtro sucio, velocidad {speed}, {basin}',
  'water.bypass-low': 'Abertura mínima que mantiene el caudal',
  'water.bypass-high': 'Abertura máxima que mantiene el caudal',
  'water.bypass-too-much': 'Demasiada agua con la derivación (bypass) así de abierta',
  'water.bypass-too-little': 'Muy poca agua con la derivación (bypass) así de abierta',

  // The whole pad.
  'water.pad': 'Caudal por el equipo',
  'water.pad-pump': 'Altura manométrica entre los dos extremos de la bomba',
  'water.pad-filter': 'Pérdida de carga en el filtro',
  'water.pad-heater': 'Pérdida de carga en {part}',
  'water.pad-bypass-valve': 'Pérdida de carga en la válvula de la derivación (bypass)',
  'water.pad-port': 'Pérdida de carga en {part}',
  'water.pad-item': 'Pérdida de carga en {part}',
  'water.switch-lowest': 'Presión mínima a la que puede cerrar el presostato, para que abra en reposo',
  'water.switch-highest': 'Presión máxima a la que puede cerrar el presostato, para que siga cerrado',
  'water.pad-switch': 'Presión en el presostato de agua de {heater}',
};
