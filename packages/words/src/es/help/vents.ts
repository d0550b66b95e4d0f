/** Of the flue gas and its way out: plate of the heater, sealed vents, chimneys, condensate, shared vents. */
export const HELP_VENTS: Readonly<Record<string, string>> = {
  'heaters.ventCategory':
    'En la placa: un número romano, de I a IV. II, III y IV piden un conducto estanco de su clase.',
  'heaters.flueOutlet': 'Mida por dentro el collarín de salida o el cortatiro, con el calentador frío.',
  'heaters.stackTemperature':
    'En las instrucciones: temperatura de los humos a la potencia nominal. Lo que mida va en las pruebas de humos.',
  'heaters.ventLengthGreatest':
    'En la tabla de conductos de las instrucciones, para su diámetro. Allí los codos cuentan como longitud.',
  'heaters.ventElbow': 'En la misma tabla: la longitud que un codo de 90° resta al conducto más largo.',
  'spots.openingScreen': 'Mida entre dos alambres de la malla o léalo en su etiqueta. Cero si no hay malla.',
  'spots.intakeHeight':
    'Del suelo, pensando en la nieve más alta, al borde inferior de la toma de aire exterior.',
  'spots.ductAlone':
    'Siga cada conducto de aire de punta a punta: solo puede servir a este cuarto, y a una abertura.',
  'spots.ductRises':
    'Ponga un nivel en el conducto de la abertura alta: el aire caliente no debe bajar para salir.',
  'spots.dryerAir':
    'En la placa o las instrucciones de la secadora; súmelas. Déjelo vacío si no hay ninguna en el cuarto.',
  'spots.hoodAir':
    'En la placa de la campana, a su mayor velocidad; súmelas. Déjelo vacío si ninguna da al cuarto.',
  'spots.supplyInterlock':
    'Pare el ventilador que mete aire: los quemadores deben apagarse. Pruébelo con las instrucciones del fabricante a mano.',
  'spots.ventMaterial':
    'Impreso a lo largo del tubo. Solo vale un material que nombren las instrucciones del calentador.',
  'spots.ventListed':
    'La etiqueta del tubo nombra categoría y laboratorio; las instrucciones, la marca. Deben coincidir.',
  'spots.ventSlope':
    'Nivel y cinta en un tramo horizontal: subida por avance, como 1/4 pulg por pie. De condensación: cae hacia el calentador.',
  'spots.singleWallCold':
    'Siga el tubo: ¿pasa algún tramo de pared simple por el exterior, un ático o un espacio sin calefacción?',
  'spots.chimneyArea':
    'Por dentro del forro, del plano o por el registro, con todo apagado y frío. Una chimenea vieja se hace revisar antes.',
  'spots.condensateDrain':
    'Busque bajo el calentador y el conducto una manguera con sifón: ¿cae a un desagüe o la eleva una bomba?',
  'spots.condensateNeutral':
    'Busque un cartucho de piedra en el desagüe, o un desagüe que aguante el ácido hasta la red pública.',
  'spots.condensateFrost':
    'Sifón y manguera están donde no hiela, con calefacción, o se vacían antes del frío.',
  'spots.condensateCapacity': 'La menor de tres placas: bomba a su altura, neutralizador, desagüe.',
  'spots.commonFittings': 'Cuente cada codo de la parte que comparten todos los calentadores.',
  'spots.commonManifold':
    '¿Se unen los conectores en un tubo horizontal antes de que suba el conducto común?',
  'spots.terminalSoffit': 'Cinta desde lo alto del terminal hasta el alero o voladizo.',
  'spots.terminalDeck':
    'Mire hacia arriba desde el terminal: ¿hay una plataforma, y está abierto por dos lados lo de abajo?',
  'spots.terminalDeckGap': 'Cinta desde lo alto del terminal hasta la cara inferior de esa plataforma.',
  'spots.adjacentOpening':
    'En horizontal, del terminal a la ventana, puerta o toma más cercana del edificio vecino. Desde su lado, con láser o plano.',
};
