/** Of the circuit and the bonding. */
export const HELP_POWER: Readonly<Record<string, string>> = {
  'circuits.heater': 'El calentador que alimenta este circuito.',
  'circuits.phases': 'Una fase en una casa; tres en algunos edificios públicos.',
  'circuits.selector':
    'Primero corte la energía. Tras la tapa, el enchufe o interruptor junto al transformador.',
  'circuits.voltsIdle': 'Solo personal calificado. Multímetro en el calentador, bomba y calentador apagados.',
  'circuits.voltsRunning': 'Solo personal calificado. Los mismos bornes con bomba y calentador en marcha.',
  'circuits.runningCurrent':
    'Pinza alrededor de un conductor del circuito, ambos en marcha. Partes con tensión: solo personal calificado.',
  'circuits.startCurrent':
    'El pico en la pinza al arrancar la bomba; use su retención del valor mayor. Partes con tensión: solo personal calificado.',
  'circuits.controlVolts': 'Solo personal calificado. En el secundario del transformador de control.',
  'circuits.breaker': 'La cifra en la palanca del interruptor del tablero.',
  'circuits.otherLoad': 'Todo lo demás tras el mismo interruptor: sume las placas.',
  'circuits.metal': 'El cobre es rojizo, el aluminio plateado. También va impreso en la funda.',
  'circuits.conductor': 'Impreso en el aislamiento: el calibre de los conductores.',
  'circuits.insulation': 'Impreso en el aislamiento: su temperatura nominal.',
  'circuits.terminals':
    'En los bornes o la tapa del tablero; el menor de ambos extremos. Partes con tensión: solo personal calificado.',
  'circuits.ambient': 'El aire más caliente por donde pasan los cables: un ático, un muro al sol.',
  'circuits.inRaceway': 'Cables que llevan corriente en el mismo tubo, sin contar tierras.',
  'circuits.length': 'A lo largo del cable, del tablero al calentador, con subidas y bajadas.',
  'circuits.equipmentGround': 'El calibre del cable verde o desnudo que va con el circuito.',
  'circuits.connection': 'Cableado fijo, cordón con clavija, o extensión.',
  'circuits.gfci': 'Un botón de prueba en el interruptor o la toma. Oprímalo: debe disparar.',
  'circuits.disconnectInSight': 'Desde el calentador se ve y se alcanza su desconectador.',
  'circuits.disconnectDistance': 'En horizontal, del desconectador a la pared interior de la piscina.',
  'circuits.barrier': 'Una cerca o muro fijo entre la piscina y el calentador y su desconectador.',
  'circuits.bonded': 'Siga el cable desnudo de cobre desde la zapata exterior hasta la piscina.',
  'circuits.bondConductor': 'El calibre de ese cable desnudo.',
  'circuits.bondStrands': 'Uno grueso es sólido, muchos finos es trenzado.',
  'circuits.burialMethod': 'Qué hay enterrado: cable solo, tubo metálico, tubo plástico.',
  'circuits.burialPlace': 'Qué hay encima: césped, losa, entrada de autos.',
  'circuits.cover': 'De su parte alta a la superficie.',
  'circuits.burialFromPool':
    'En horizontal, del cableado enterrado a la pared interior; cero si pasa por debajo.',
  'circuits.controlRoute':
    'Cómo entran los cables de baja tensión al calentador: nunca junto a los de potencia.',
  'circuits.controlSpacing': 'Entre el cable de baja tensión y los de potencia.',
  'circuits.remote': 'Busque un cable del controlador de la piscina y cuente sus hilos.',
  'circuits.remoteDistance': 'Del control remoto a la pared interior de la piscina.',
  'circuits.localLimit': 'Su termostato está ajustado, y nada pedido de otro lado lo supera.',
  'circuits.interlocked': 'Pare la bomba: el calentador debe perder energía o la demanda.',
  'circuits.runOn': 'Apague el quemador y mida cuánto sigue la bomba.',
  'bonding.perimeter': 'Qué une el suelo alrededor de la piscina. Existente si no se abre el suelo.',
  'bonding.points': 'Cuente los puntos donde el anillo o malla se une al acero.',
  'bonding.width': 'Cuánto llega el suelo unido desde la pared interior.',
  'bonding.gridPitch': 'Entre dos hilos de la malla de cobre.',
  'bonding.ringDistance': 'Del anillo de cobre a la pared interior de la piscina.',
  'bonding.ringDepth': 'A qué profundidad va el anillo bajo la subrasante.',
  'bonding.waterContact':
    'Metal unido que toca el agua: escalera, luz, placa en el desnatador. Sume su área.',
  'bonding.tingle':
    'Pregunte: ¿alguien sintió un cosquilleo en el agua o en un barandal? Sí: todos fuera, corte la energía, llame a un electricista.',
};
