/** Of the water loop: pump, filter, pipes, valves. */
export const HELP_WATER: Readonly<Record<string, string>> = {
  'pumps.name': 'Por ejemplo, bomba del filtro.',
  'pumps.curve':
    'En las instrucciones de la bomba: carga según el caudal a toda velocidad. Bastan cuatro o cinco puntos.',
  'pumps.speedFull': 'La velocidad de esa curva, impresa en ella o en el motor.',
  'pumps.efficiency': 'Del cable al agua en su mejor punto, si los datos lo dicen.',
  'pumps.suctionHead': 'En su curva: carga de aspiración exigida (NPSH) al caudal mayor.',
  'pumpSpeeds.name': 'Para qué es esta velocidad: filtrar, calentar, spa.',
  'pumpSpeeds.speed': 'En la pantalla de la bomba mientras va así.',
  'pumpSpeeds.heating': 'El calentador puede trabajar a esta velocidad.',
  'pumpSpeeds.basins': 'Los vasos que recircula esta velocidad. Vacío: cualquiera.',
  'filters.name': 'Por ejemplo, filtro de arena.',
  'filters.kind':
    'El de arena lleva válvula de varias vías; el de cartucho o rejillas se abre con abrazadera.',
  'filters.area': 'En su placa: área de filtración.',
  'filters.cleanLoss': 'Manómetro antes y después, limpio: la diferencia. O de su curva.',
  'filters.cleanFlow': 'El caudal al que se leyó esa pérdida.',
  'filters.cleanSpeed': 'La velocidad del motor a la que se leyó limpio.',
  'filters.dirtyRise':
    'Cuánto puede subir el manómetro sobre limpio antes de limpiarlo: pregunte a quien lo cuida.',
  'filters.gaugeClean': 'El manómetro antes de él recién limpio, a la misma velocidad.',
  'filters.gaugeNow': 'El manómetro antes de él tal como lo encuentra.',
  'filters.speedNow': 'La velocidad del motor mientras lee ese manómetro.',
  'filters.rateGreatest': 'En su placa o en las normas sanitarias: caudal máximo por unidad de área.',
  'waterRuns.name': 'Cómo llamaría a este tramo.',
  'waterRuns.role': 'Su lugar en el circuito. Siga el agua: piscina, bomba, filtro, calentador, piscina.',
  'waterRuns.basin': 'El vaso del que viene o al que va.',
  'waterRuns.heater': 'El calentador que alimenta este ramal.',
  'waterRuns.material': 'Impreso a lo largo del tubo: material y cédula.',
  'waterRuns.size': 'Impreso a lo largo del tubo: su tamaño comercial.',
  'waterRuns.length': 'A lo largo del tubo; los accesorios aparte. Bajo tierra: el camino que debe seguir.',
  'waterRuns.fittings': 'Cuente lo que ve; bajo tierra, lo que necesita para llegar.',
  'waterLoop.bypass': '¿Hay una válvula entre el tubo que va al calentador y el que vuelve?',
  'waterLoop.bypassCv': 'En los datos de esa válvula: coeficiente de caudal abierta del todo.',
  'waterLoop.bypassOpening': 'Dónde está su palanca: nada es cerrada, todo es abierta, mitad es mitad.',
  'waterLoop.bypassCharacter': 'Qué clase de válvula es. En piscinas suelen ser de bola o mariposa.',
  'waterLoop.manifold':
    'Varios calentadores: ¿el primero de ida vuelve primero (directo) o último (inverso)?',
  'waterLoop.checkValve':
    'Una válvula de retención tras el calentador, antes de todo lo que dosifica químicos.',
  'waterLoop.feeder': 'Dónde entra el cloro o ácido. Antes del calentador se come el cobre.',
  'waterLoop.timer': 'Un reloj o controlador enciende y apaga bomba y calentador.',
  'waterLoop.flowFound':
    'Un caudalímetro en la tubería del calentador viejo, la bomba a la velocidad con que calienta; o por su propio salto de temperatura. Vale por el circuito hasta que se lean bomba y tuberías.',
  'waterLoop.flowShare':
    'Cómo cambia el caudal con el nuevo en lugar del viejo: 1 si los dos frenan el agua igual.',
  'waterLoop.solarPipe': 'Tubo libre entre filtro y calentador, reservado para uno solar después.',
  'waterLoop.spillwayHeight': 'Del borde del spa a la superficie de la piscina.',
  'waterLoop.pumpAbovePool': 'Nivel de la superficie de la piscina al centro de la bomba.',
  'waterLoop.waterTemperature': 'Termómetro en el agua el día que lee los manómetros.',
  'waterLoop.electricityPrice': 'De la última factura, todo incluido, dividido por la energía.',
};
