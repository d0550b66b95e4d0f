import type { RuleWords } from '../dictionary.ts';

const OFF = 'Mantener el calentador apagado hasta corregirlo.';

export const RULES_AIR: Readonly<Record<string, RuleWords>> = {
  'air.combustion-air': {
    title: 'Aire de combustión',
    asks: 'El volumen del recinto, sus aberturas o un ventilador dan a todos los quemadores que hay en él el aire que necesitan.',
    mend: `${OFF} Aberturas mayores: una que comience a no más de 12 pulg (305 mm) del techo y otra a no más de 12 pulg (305 mm) del piso; o un ventilador que introduzca aire y que, si se detiene, detenga los quemadores.`,
  },
  'air.supply-opening': {
    title: 'Abertura de entrada de aire',
    asks: 'La abertura que trae el aire a los quemadores tiene el área libre que el código exige para el consumo calorífico de estos.',
    mend: `${OFF} Una abertura mayor, o un conducto que tenga al menos esa área.`,
  },
  'air.high-opening': {
    title: 'Abertura de salida del aire caliente',
    asks: 'Por encima de 400\u00a0000 Btu/h (117 kW), una abertura alta tiene la décima parte del área de la que trae el aire, y no menos de 10 pulg² (65 cm²).',
    mend: 'Abrir una abertura alta, separada al menos 12 pulg (305 mm) de la que trae el aire.',
  },
  'air.opening-low': {
    title: 'Abertura baja cerca del piso',
    asks: 'La abertura baja comienza dentro de la distancia al piso que fija el código.',
    mend: 'Bajar la abertura, o bajar su conducto por dentro del recinto.',
  },
  'air.opening-high': {
    title: 'Abertura alta cerca del techo',
    asks: 'La abertura alta comienza dentro de la distancia al techo que fija el código.',
    mend: 'Subir la abertura: el aire caliente se acumula bajo el techo.',
  },
  'air.opening-side': {
    title: 'Aberturas no demasiado estrechas',
    asks: 'El lado más corto de una abertura de aire mide al menos lo que fija el código.',
    mend: 'Hacer una abertura de igual área con el lado corto más largo.',
  },
  'air.room-pull': {
    title: 'Los extractores no dejan el recinto en depresión',
    asks: 'Con todos los extractores y quemadores en marcha, la depresión del recinto respecto al exterior es tan pequeña que no hace retroceder los gases de combustión. Es una estimación; decide la medición con manómetro a través de la puerta.',
    mend: `${OFF} Aberturas mayores, un ventilador que introduzca el aire que los otros extraen, o el extractor en otro lugar. Si alguien se siente mal: salir todos y pedir ayuda antes que nada.`,
  },
  'air.vent-suits': {
    title: 'Conducto de humos del tipo correcto',
    asks: 'Los gases que condensan salen por un conducto estanco del material que indica el fabricante; el tubo de pared sencilla sirve solo a aparatos con cortatiro.',
    mend: `${OFF} Instalar el conducto de humos que nombran las instrucciones del fabricante.`,
  },
  'air.vent-carries': {
    title: 'El conducto de humos alcanza para los gases de combustión',
    asks: 'El conducto de humos, o el conector, admite al menos el consumo calorífico del calentador a nivel del mar.',
    mend: `${OFF} Un conducto más ancho o más alto, un tramo lateral más corto, menos codos, u otro modo de evacuación que el fabricante permita.`,
  },
  'air.vent-stays-dry': {
    title: 'El conducto de humos se mantiene seco',
    asks: 'El consumo calorífico del calentador en el sitio es al menos el que mantiene caliente un conducto de este tamaño.',
    mend: 'Un conducto o conector más estrecho que aún admita el consumo, pared doble en lugar de sencilla, o menos longitud en ambiente frío.',
  },
  'air.common-vent-carries': {
    title: 'El conducto de humos común alcanza para todos sus calentadores',
    asks: 'La parte común del conducto de humos admite el consumo calorífico a nivel del mar de todos los calentadores conectados a ella.',
    mend: `${OFF} Un conducto común más ancho, o un conducto propio para uno de ellos.`,
  },
  'air.vent-high': {
    title: 'El conducto de humos tiene altura para dar tiro',
    asks: 'El conducto de humos termina por encima de la salida del calentador al menos a la altura que fija el código.',
    mend: 'Instalar un conducto más alto.',
  },
  'air.cap-over-roof': {
    title: 'Sombrerete separado del techo',
    asks: 'El sombrerete queda sobre el techo a la altura que exige la pendiente, o una pared más alta que esté cerca.',
    mend: 'Un conducto más alto; si hay una pared a menos de 10 pies (3 m), también 2 pies (0.6 m) por encima de ella.',
  },
  'air.flue-from-openings': {
    title: 'Gases de combustión lejos de ventanas y puertas',
    asks: 'La salida de gases de combustión está tan lejos de toda abertura de un edificio como exige el código para su tipo.',
    mend: 'Otra ubicación, o un conducto que lleve los gases más lejos. Si alguien se siente mal: salir todos y pedir ayuda antes que nada.',
  },
  'air.flue-from-inlet': {
    title: 'Gases de combustión lejos de las tomas de aire',
    asks: 'La salida de gases de combustión está bastante lejos, o bastante por encima, de toda toma por la que un ventilador introduce aire en un edificio.',
    mend: 'Otra ubicación, un terminal más alto, o la toma de aire en otro lugar.',
  },
  'air.terminal-over-ground': {
    title: 'Terminal por encima del suelo',
    asks: 'La parte inferior de un terminal en la pared está al menos a la altura exigida sobre el suelo; la nieve cuenta como suelo.',
    mend: 'Instalar el terminal más alto.',
  },
  'air.terminal-over-walkway': {
    title: 'Terminal por encima de un paso público',
    asks: 'Junto a un paso público, el terminal queda por encima de la cabeza de las personas.',
    mend: 'Instalar el terminal más alto, o en otra pared.',
  },
  'air.no-chemicals': {
    title: 'Sin productos químicos donde hay llama',
    asks: 'No se guardan productos químicos de piscina en el recinto donde quema el calentador: sus vapores lo corroen, y el calentador puede encenderlos.',
    mend: 'Guardar los productos químicos en un depósito propio, lejos de toda llama.',
  },
};
