import type { RuleWords } from '../dictionary.ts';

export const RULES_CHEMISTRY: Readonly<Record<string, RuleWords>> = {
  'water.saturation-index': {
    title: 'Agua equilibrada',
    asks: 'El índice de saturación de la muestra, por la tabla de factores y a la temperatura actual del agua, está dentro de la banda.',
    mend: 'Por debajo: el agua ataca el cobre, los cabezales y el intercambiador; subir el pH, la alcalinidad o el calcio. Por encima: se forman incrustaciones en el intercambiador, que se sobrecalienta, retumba y se agrieta; bajar el pH o la alcalinidad, o cambiar agua.',
  },
  'water.saturation-index-heated': {
    title: 'El agua sigue equilibrada cuando está caliente',
    asks: 'La misma muestra, a la temperatura deseada, está dentro de la banda: el agua caliente retiene menos cal.',
    mend: 'Por encima: la incrustación crece donde el agua está más caliente, en el intercambiador; bajar el pH o la alcalinidad antes de usar el calentador por mucho tiempo. Por debajo: el agua ataca el intercambiador incluso caliente.',
  },
  'water.ph': {
    title: 'pH',
    asks: 'El pH está dentro de la banda de la norma.',
    mend: 'Con pH bajo el agua disuelve el cobre del intercambiador y mancha la piscina; con pH alto deja incrustación en él. Corregir poco a poco, con la bomba en marcha y el calentador apagado.',
  },
  'water.calcium-hardness': {
    title: 'Dureza cálcica',
    asks: 'La dureza cálcica está dentro de la banda para una piscina o un spa.',
    mend: 'Demasiado blanda: el agua toma la cal del revestimiento y de las juntas, y con ella el metal. Demasiado dura: incrustación en el intercambiador; cambiar parte del agua.',
  },
  'water.total-alkalinity': {
    title: 'Alcalinidad total',
    asks: 'La alcalinidad total está dentro de la banda de la norma.',
    mend: 'Baja: el pH oscila y el intercambiador se corroe. Alta: el pH sube y después llega la incrustación.',
  },
  'water.cyanuric-acid': {
    title: 'Ácido cianúrico',
    asks: 'El ácido cianúrico se mantiene por debajo del límite de la norma.',
    mend: 'Cambiar parte del agua, y dosificar un cloro que no lo aporte.',
  },
  'water.free-chlorine': {
    title: 'Cloro libre',
    asks: 'El cloro libre está donde se suele mantener en una piscina o un spa; mandan las normas sanitarias del lugar.',
    mend: 'Demasiado: ataca el cobre y los sellos; detener el dosificador, y nunca dosificar en la succión antes del calentador. Muy poco: nadie entra al agua hasta corregirlo.',
  },
  'water.relief-valve': {
    title: 'Válvula de alivio en el calentador',
    asks: 'Si el agua puede quedar encerrada en el calentador, o si la placa lo pide, el calentador tiene su propia válvula de alivio, sin nada entre ambos.',
    mend: 'Instalarla en el calentador antes de encenderlo; entre los dos no puede haber ninguna válvula.',
  },
  'water.relief-setting': {
    title: 'Válvula de alivio ajustada a lo que soporta el calentador',
    asks: 'La presión de ajuste grabada en la válvula no supera la presión máxima de trabajo del calentador.',
    mend: 'Una válvula de menor presión de ajuste. Nunca reajustarla ni taponarla.',
  },
  'water.relief-capacity': {
    title: 'La válvula de alivio descarga todo el consumo calorífico',
    asks: 'La capacidad grabada en la válvula es al menos el consumo calorífico del calentador; una libra de vapor por hora equivale a 1000 Btu/h.',
    mend: 'Una válvula de mayor capacidad.',
  },
  'water.relief-discharge': {
    title: 'Descarga de la válvula de alivio abierta',
    asks: 'El tubo de descarga es tan ancho como la salida de la válvula, no tiene válvulas ni rosca en el extremo, y no puede quemar a nadie.',
    mend: 'Llevarlo a diámetro completo y con pendiente hasta un lugar seguro y a la vista.',
  },
  'water.relief-discharge-end': {
    title: 'La descarga de alivio termina cerca del piso',
    asks: 'El extremo del tubo de descarga no está más alto sobre el piso o el suelo de lo que permite la regla para calderas.',
    mend: 'Prolongar el tubo hacia abajo.',
  },
};
