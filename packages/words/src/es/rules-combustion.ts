import type { RuleWords } from '../dictionary.ts';

export const RULES_COMBUSTION: Readonly<Record<string, RuleWords>> = {
  'air.co-air-free': {
    title: 'Monóxido de carbono en los gases de combustión',
    asks: 'En régimen estable, y otra vez a los diez minutos, el monóxido de carbono libre de aire (sin el aire que lo diluye) se mantiene por debajo de lo que un aparato puede emitir.',
    mend: 'Sobre el límite o en aumento: apagar, ventilar el lugar y no dejar que nadie lo use. Después, un instalador de gas autorizado revisa el tipo de gas, la presión en el quemador, el quemador, el ventilador y el intercambiador.',
  },
  'air.flue-oxygen': {
    title: 'Oxígeno en los gases de combustión',
    asks: 'Medido antes de que lo diluya el aire, el oxígeno está donde suele estar con este modo de evacuación; manda la placa.',
    mend: 'Bajo: poco aire o demasiado gas. Alto: demasiado aire, una fuga antes de la sonda o un quemador con poco gas. Ajustar solo según las instrucciones del fabricante.',
  },
  'air.flue-dry': {
    title: 'Los gases de combustión salen secos',
    asks: 'A la salida, los gases de combustión están más calientes que su punto de rocío, de modo que nada gotea en un calentador que no es de condensación.',
    mend: 'Agua más caliente al intercambiador, consumo calorífico completo, menos exceso de aire. El condensado es ácido: ataca el cobre y el conducto de humos.',
  },
  'air.flue-loss': {
    title: 'La pérdida por los gases de combustión no supera lo que deja la placa',
    asks: 'El calor que se va con los gases de combustión no supera lo que resta de la eficiencia de la placa.',
    mend: 'Hollín o incrustación en el intercambiador, demasiado aire, o un consumo calorífico mayor que el de la placa. Limpiar solo según las instrucciones del fabricante.',
  },
  'gas.clocked-input': {
    title: 'Consumo según el medidor',
    asks: 'Cronometrado en el medidor sin nada más encendido, el calentador quema lo que dice su placa para esta altitud, con un veinteavo de margen.',
    mend: 'De más: presión del colector, orificios y tipo de gas, por un técnico calificado, con el calentador apagado. De menos: presión de suministro, orificios, aire.',
  },
  'heat.found-in-water': {
    title: 'El calor de la llama se halla en el agua',
    asks: 'Lo que se lleva el agua es lo contado en el medidor por el rendimiento de la placa, con un décimo de margen.',
    mend: 'Revisar primero caudalímetro y termómetros; luego la pérdida por humos; luego hollín y sarro, limpiados solo según el fabricante.',
  },
};
