import type { RuleWords } from '../dictionary.ts';

export const RULES_WATER: Readonly<Record<string, RuleWords>> = {
  'water.heater-flow': {
    title: 'Caudal de agua por el calentador',
    asks: 'A esta velocidad y con este estado del filtro, el calentador no recibe ni menos ni más agua de la que permite su placa.',
    mend: 'Muy poca: mayor velocidad, tubería más ancha, filtro más limpio, menos derivación. Demasiada: más derivación, menor velocidad.',
  },
  'water.bypass-range': {
    title: 'Una abertura de la derivación (bypass) sirve a toda velocidad y estado del filtro',
    asks: 'Hay una abertura de la derivación que mantiene el caudal del calentador dentro de su banda siempre que pueda funcionar.',
    mend: 'Acercar entre sí las velocidades de calentamiento, limpiar antes el filtro, o poner una válvula que regule sola el caudal.',
  },
  'water.bypass-handle': {
    title: 'Manija de la derivación (bypass) en su sitio',
    asks: 'La derivación está dentro de la abertura que sirve a toda velocidad y estado del filtro.',
    mend: 'Girar la manija hasta el rango indicado, comprobarlo con un caudalímetro o con el salto de temperatura, y marcarlo.',
  },
  'water.header-flow': {
    title: 'Caudal por un cabezal de 2 pulg',
    asks: 'El cabezal de 2 pulg del calentador no lleva más de 125 gpm (473 L/min); lo que pase de ahí debe ir por fuera del calentador.',
    mend: 'Una derivación por fuera del calentador, o menor velocidad.',
  },
  'water.temperature-rise': {
    title: 'Salto de temperatura en el calentador',
    asks: 'Con el caudal mínimo que recibe, el agua sale del calentador no más caliente de lo que permite su placa.',
    mend: 'Más agua por el calentador: menos derivación, mayor velocidad, filtro más limpio.',
  },
  'water.exchanger-inlet': {
    title: 'El agua entra bastante caliente al intercambiador',
    asks: 'Al comenzar un calentamiento, el agua que entra al intercambiador no está más fría de lo que el calentador admite por mucho tiempo.',
    mend: 'Por debajo, los gases de combustión condensan dentro. Pedir al fabricante una válvula mezcladora o un modo de arrancar con agua más fría.',
  },
  'water.heater-pressure': {
    title: 'Presión de agua en el calentador con una válvula cerrada',
    asks: 'La bomba a su velocidad máxima contra un retorno cerrado no pasa de la presión de trabajo del calentador.',
    mend: 'Limitar la velocidad máxima, o quitar todo lo que pueda cerrar el retorno después del calentador.',
  },
  'water.switch-window': {
    title: 'El presostato de agua se puede ajustar',
    asks: 'Hay un ajuste que abre con la bomba parada y sigue cerrado a toda velocidad y estado del filtro en que funciona el calentador.',
    mend: 'Instalar un verdadero interruptor de flujo, o subir la velocidad de calentamiento más baja. Nunca puentear el presostato, ni siquiera para probar.',
  },
  'water.switch-setting': {
    title: 'El presostato de agua está bien ajustado',
    asks: 'El presostato cierra por encima de lo que siente con el agua en reposo y por debajo de lo mínimo que siente en marcha.',
    mend: 'Ajustarlo al rango indicado según las instrucciones del fabricante, y comprobar que abre cuando la bomba se detiene.',
  },
  'water.pipe-velocity': {
    title: 'Velocidad del agua en la tubería',
    asks: 'Con el caudal máximo, el agua no pasa del límite de velocidad para succión o para tubería a presión.',
    mend: 'El siguiente diámetro mayor en este tramo, un segundo tramo en paralelo, o una velocidad máxima de bomba más baja.',
  },
  'water.filter-rate': {
    title: 'El filtro no se sobrecarga',
    asks: 'Con el caudal máximo, el filtro no recibe por unidad de área más de lo que permite su fabricante.',
    mend: 'Una velocidad máxima más baja, o un filtro mayor.',
  },
  'water.filter-loading': {
    title: 'El filtro aún no necesita limpieza',
    asks: 'El manómetro, llevado a la velocidad de la lectura en limpio, ha subido menos que el aumento con que se limpia el filtro.',
    mend: 'Limpiar el filtro, y anotar manómetro y velocidad con el filtro limpio.',
  },
  'water.turnover': {
    title: 'Toda el agua recircula a tiempo',
    asks: 'A la velocidad de filtración, con el filtro a punto de limpiarse, toda el agua pasa por él en el tiempo exigido.',
    mend: 'Mayor velocidad de filtración, más horas al día, o un filtro más limpio.',
  },
  'water.pump-suction': {
    title: 'La bomba tiene succión de sobra',
    asks: 'Con el caudal máximo y el agua más caliente, la entrada de la bomba queda por encima de la ebullición lo que la bomba pide.',
    mend: 'Tubería de succión más ancha, canasta limpia, menor velocidad, o la bomba más baja y más cerca.',
  },
  'water.check-valve': {
    title: 'Válvula de retención después del calentador',
    asks: 'Una válvula de retención impide que el cloro vuelva al calentador mientras la bomba está parada.',
    mend: 'Instalarla entre el calentador y el dosificador de productos químicos.',
  },
};
