import type { RuleWords } from '../dictionary.ts';

const ELECTRICIAN =
  'Trabajo para un electricista autorizado; energía cortada y bloqueada antes de quitar una tapa.';

/** Protection, disconnect, buried and low-voltage wiring, control. */
export const RULES_POWER_WIRING: Readonly<Record<string, RuleWords>> = {
  'power.ground-fault': {
    title: 'Protección por falla a tierra (GFCI)',
    asks: 'El circuito de un calentador de piscina a gas que supera el límite de contacto de baja tensión protege a las personas contra fallas a tierra.',
    mend: `Instalar la protección antes de usar el calentador. ${ELECTRICIAN}`,
  },
  'power.ground-fault-near-water': {
    title: 'Protección por falla a tierra (GFCI) cerca del agua',
    asks: 'El equipo a menos de 3 m de la pared interior, sin barrera que lo separe, está protegido contra fallas a tierra.',
    mend: `Instalar la protección antes de usar el calentador. ${ELECTRICIAN}`,
  },
  'power.disconnect-in-sight': {
    title: 'Medio de desconexión a la vista',
    asks: 'Hay un medio de desconexión a la vista del calentador, a no más de 50 pies (15 m).',
    mend: `Instalar un medio de desconexión a la vista, fuera del alcance desde el agua. ${ELECTRICIAN}`,
  },
  'power.disconnect-from-water': {
    title: 'Medio de desconexión fuera del alcance desde el agua',
    asks: 'El medio de desconexión está a 5 pies (1.5 m) o más de la pared interior de la piscina, o tras una barrera permanente.',
    mend: `Moverlo, o poner una barrera entre él y el agua. ${ELECTRICIAN}`,
  },
  'power.fixed-wiring': {
    title: 'Sin cordón de extensión',
    asks: 'El calentador no se alimenta con un cordón de extensión.',
    mend: `Desenchufarlo y mantenerlo apagado hasta que tenga cableado fijo. ${ELECTRICIAN}`,
  },
  'power.burial-depth': {
    title: 'Cableado a suficiente profundidad',
    asks: 'Sobre el cableado enterrado hay la cobertura que piden su método y lo que tiene encima.',
    mend: `Enterrarlo más hondo, o en tubo metálico, o bajo concreto (hormigón). ${ELECTRICIAN}`,
  },
  'power.raceway-near-pool': {
    title: 'Cableado enterrado en canalización cerca de la piscina',
    asks: 'Bajo la piscina o a menos de 5 pies (1.5 m) de ella, el cableado va en una canalización y no enterrado directamente.',
    mend: `Alejarlo de la piscina, o tender una canalización. ${ELECTRICIAN}`,
  },
  'power.burial-near-pool': {
    title: 'Cableado a suficiente profundidad cerca de la piscina',
    asks: 'Bajo la piscina o a menos de 5 pies (1.5 m) de ella, la canalización está a la profundidad que pide su material.',
    mend: `Alejarlo de la piscina, o enterrarlo más hondo. ${ELECTRICIAN}`,
  },
  'power.low-voltage-apart': {
    title: 'Cableado de control separado del de fuerza',
    asks: 'El cableado de control, de baja tensión, tiene su propia canalización, una barrera o su propio recorrido; no comparte nada con el de fuerza.',
    mend: `Darle una canalización propia. ${ELECTRICIAN}`,
  },
  'power.low-voltage-spacing': {
    title: 'Cable de control alejado del de fuerza',
    asks: 'Un cable de control fuera de canalización guarda 2 pulg (50 mm) con los conductores de fuerza.',
    mend: 'Mover el cable, o ponerlo en una canalización.',
  },
  'power.interlocked': {
    title: 'Calentador enclavado con la bomba',
    asks: 'El calentador tiene energía, o demanda de calor, solo con su bomba en marcha; su propio presostato de agua se suma a esto.',
    mend: `Alimentarlo del lado conmutado de la bomba, o por su controlador. ${ELECTRICIAN}`,
  },
  'power.run-on': {
    title: 'La bomba sigue después del quemador',
    asks: 'La bomba sigue en marcha el tiempo que piden las instrucciones del calentador, para que el calor restante pase al agua.',
    mend: `Ajustar a ese tiempo el contacto de retardo del temporizador, o el enfriamiento del controlador. ${ELECTRICIAN}`,
  },
  'power.local-limit': {
    title: 'El termostato propio del calentador es el límite',
    asks: 'Aunque la demanda venga de otro control, el calentador se detiene por su propio termostato.',
    mend: 'Ajustar su termostato al agua más caliente que se desee, nunca más de lo que soportan las personas.',
  },
  'power.remote-from-water': {
    title: 'Control remoto lejos del agua',
    asks: 'Un control remoto cableado está a 10 pies (3 m) o más de la pared interior de la piscina.',
    mend: `Moverlo, o elegir uno listado para estar junto al agua. ${ELECTRICIAN}`,
  },
};
