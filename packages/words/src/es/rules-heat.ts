import type { RuleWords } from '../dictionary.ts';

export const RULES_HEAT: Readonly<Record<string, RuleWords>> = {
  'heat.hold-temperature': {
    title: 'Los calentadores mantienen el agua caliente el día de diseño',
    asks: 'El día medio del mes de diseño (o, si no lo hay, del mes de uso más frío), sin sol, los calentadores juntos dan al menos lo que pierde toda el agua mantenida a su temperatura deseada. En interior: con el recinto como está.',
    mend: 'Más calentador, más horas de cubierta, protección contra el viento, o una temperatura deseada más baja.',
  },
  'heat.warm-in-time': {
    title: 'Agua caliente en el tiempo deseado',
    asks: 'Desde la temperatura inicial del día de diseño, contadas las pérdidas, el agua se calienta en el tiempo deseado con los calentadores solo para ella.',
    mend: 'Más calentador, prometer al cliente un plazo mayor, o cubrir el agua mientras se calienta.',
  },
  'heat.plateau': {
    title: 'La temperatura deseada es alcanzable',
    asks: 'La temperatura a la que las pérdidas se llevan todo el calor de los calentadores está por encima de la deseada; si el agua herviría antes, se da su punto de ebullición.',
    mend: 'Más calentador o menos pérdidas: esperar más tiempo no lo resuelve.',
  },
  'heat.not-too-hot': {
    title: 'Agua no demasiado caliente para las personas',
    asks: 'La temperatura deseada no pasa de 104 °F (40 °C).',
    mend: 'Ajustarla más baja. El agua más caliente puede matar, primero a niños y a personas enfermas del corazón.',
  },
};
