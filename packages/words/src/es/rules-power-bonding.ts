import type { RuleWords } from '../dictionary.ts';

const ELECTRICIAN = 'Trabajo para un electricista autorizado.';

/** What holds everything around the water at one potential. */
export const RULES_POWER_BONDING: Readonly<Record<string, RuleWords>> = {
  'power.no-tingle': {
    title: 'Nadie siente hormigueo',
    asks: 'Nadie ha sentido hormigueo en el agua, en el piso perimetral ni en nada metálico de allí.',
    mend: 'Todos fuera del agua y del piso mojado, sin tocar metal; después cortar la energía en el tablero y llamar a un electricista autorizado y a la compañía eléctrica. Nadie entra hasta que se encuentre la causa.',
  },
  'power.bonded': {
    title: 'Calentador unido a la red equipotencial de la piscina',
    asks: 'El terminal de conexión equipotencial del calentador está unido a la red equipotencial de la piscina.',
    mend: `Unirlo antes de que nadie esté en el agua. ${ELECTRICIAN}`,
  },
  'power.bond-size': {
    title: 'Conductor equipotencial de tamaño suficiente',
    asks: 'El conductor equipotencial de cobre tiene el tamaño que pide el código; desnudo, cubierto o aislado.',
    mend: `Tender uno mayor. ${ELECTRICIAN}`,
  },
  'power.bond-solid': {
    title: 'Conductor equipotencial sólido',
    asks: 'El conductor equipotencial es de cobre sólido.',
    mend: `Tender uno sólido. ${ELECTRICIAN}`,
  },
  'power.water-bond': {
    title: 'Conexión equipotencial del agua de la piscina',
    asks: 'Terminado el trabajo, siguen en contacto con el agua 9 pulg² (58 cm²) o más de metal unido a la red equipotencial.',
    mend: `Instalar en la tubería un accesorio de conexión equipotencial del agua. ${ELECTRICIAN}`,
  },
  'power.perimeter-bonded': {
    title: 'Conexión equipotencial del suelo perimetral',
    asks: 'Donde se abre o se coloca suelo alrededor de la piscina, este queda unido por el acero del vaso, una malla o un anillo.',
    mend: `Unirlo antes de cerrarlo. ${ELECTRICIAN}`,
  },
  'power.perimeter-points': {
    title: 'Suelo perimetral unido en puntos suficientes',
    asks: 'El acero, la malla o el anillo está conectado en tantos puntos, bien repartidos, como pide el código.',
    mend: `Agregar los puntos que faltan antes de cerrar el suelo. ${ELECTRICIAN}`,
  },
  'power.perimeter-width': {
    title: 'Ancho suficiente del suelo equipotencial',
    asks: 'El suelo unido a la red equipotencial llega tan lejos de la pared interior como pide el código.',
    mend: `Ensancharlo antes de cerrar el suelo. ${ELECTRICIAN}`,
  },
  'power.ring-distance': {
    title: 'Anillo de cobre a su distancia de la pared',
    asks: 'El anillo de cobre que sustituye a la malla está, desde la pared interior, dentro de la banda del código.',
    mend: `Moverlo antes de cerrar el suelo. ${ELECTRICIAN}`,
  },
  'power.ring-depth': {
    title: 'Anillo de cobre a su profundidad',
    asks: 'El anillo de cobre está, bajo la subrasante, dentro de la banda del código.',
    mend: `Corregirlo antes de cerrar el suelo. ${ELECTRICIAN}`,
  },
  'power.grid-pitch': {
    title: 'Paso de la malla de cobre',
    asks: 'Los conductores de la malla de cobre están a un pie (30 cm) entre sí, con la tolerancia del código.',
    mend: `Corregir el paso antes de cerrar el suelo. ${ELECTRICIAN}`,
  },
};
