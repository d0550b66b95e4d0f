import type { RuleWords } from '../dictionary.ts';
import { RULES_POWER_BONDING } from './rules-power-bonding.ts';
import { RULES_POWER_WIRING } from './rules-power-wiring.ts';

const ELECTRICIAN =
  'Trabajo para un electricista autorizado; energía cortada y bloqueada antes de quitar una tapa.';

export const RULES_POWER: Readonly<Record<string, RuleWords>> = {
  'power.selector': {
    title: 'El selector de tensión coincide con el suministro',
    asks: 'La tensión medida del suministro está a menos de un décimo de la que marca el selector del calentador.',
    mend: `Poner el selector en la tensión que se midió, no en la del rótulo del tablero. ${ELECTRICIAN}`,
  },
  'power.control-voltage': {
    title: 'Tensión de control',
    asks: 'Con todo en marcha, el circuito de control tiene entre el 85 y el 110 % de 24 V; fuera de ahí sus relés vibran o se queman.',
    mend: `Revisar primero el selector y el suministro; después el transformador y lo que lo carga. ${ELECTRICIAN}`,
  },
  'power.voltage-idle': {
    title: 'Tensión del suministro, nada en marcha',
    asks: 'En el calentador, con calentador y bomba apagados, la tensión está a menos de un décimo de la de su placa.',
    mend: `Averiguar con qué se alimenta el edificio, 208 V o 240 V. ${ELECTRICIAN}`,
  },
  'power.voltage-running': {
    title: 'Tensión del suministro, calentador y bomba en marcha',
    asks: 'En el calentador, con calentador y bomba en marcha, la tensión está a menos de un décimo de la de su placa.',
    mend: `Buscar un recorrido largo o un conductor delgado, una conexión floja o un suministro débil. ${ELECTRICIAN}`,
  },
  'power.voltage-at-start': {
    title: 'Tensión del suministro al arrancar la bomba',
    asks: 'Mientras arranca la bomba, la tensión no baja del 85 % de la placa del calentador; por debajo, sus relés se abren.',
    mend: `Arrancar bomba y calentador uno después del otro, dar a la bomba su propio circuito, o reforzar el suministro. ${ELECTRICIAN}`,
  },
  'power.voltage-drop': {
    title: 'Caída de tensión hasta el calentador',
    asks: 'Del tablero al calentador, la corriente del circuito no pierde más tensión de la que el código recomienda; en Canadá, de la que permite.',
    mend: `Un conductor mayor o un recorrido más corto. ${ELECTRICIAN}`,
  },
  'power.supply-sag': {
    title: 'Caída de tensión de alimentador y circuito juntos',
    asks: 'De reposo a marcha, la tensión en el calentador no cae más de lo que el código recomienda.',
    mend: `Medir también en el tablero: lo que se pierde ahí es del alimentador o de la compañía eléctrica. ${ELECTRICIAN}`,
  },
  'power.conductor-copper': {
    title: 'Conductores de cobre',
    asks: 'El conductor hasta el calentador es de cobre, como piden sus terminales.',
    mend: `Cobre desde el tablero, o un empalme hecho para los dos metales. ${ELECTRICIAN}`,
  },
  'power.wire-carries-load': {
    title: 'El conductor alcanza para la corriente del circuito',
    asks: 'Por donde pasa, la ampacidad del conductor de cobre es al menos la corriente de todo lo que hay en su circuito.',
    mend: `Un conductor mayor. ${ELECTRICIAN}`,
  },
  'power.breaker-carries-load': {
    title: 'El interruptor automático soporta la corriente por horas',
    asks: 'El interruptor automático es para el 125 % de la corriente de una carga que dura horas.',
    mend: `Un interruptor automático mayor con su conductor, o un circuito propio. ${ELECTRICIAN}`,
  },
  'power.breaker-protects-wire': {
    title: 'El interruptor automático protege el conductor',
    asks: 'El interruptor automático no es mayor que el que admite el conductor.',
    mend: `Un interruptor automático menor, o un conductor mayor. ${ELECTRICIAN}`,
  },
  'power.equipment-ground': {
    title: 'Conductor de puesta a tierra de equipos suficiente',
    asks: 'El conductor de puesta a tierra de equipos, de cobre, es del tamaño que pide el interruptor automático, y crece con los conductores que se aumentan.',
    mend: `Tender uno mayor junto con los conductores. ${ELECTRICIAN}`,
  },
  ...RULES_POWER_WIRING,
  ...RULES_POWER_BONDING,
};
