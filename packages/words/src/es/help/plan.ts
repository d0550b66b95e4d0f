/** Of the plan, and of the lift. */
export const HELP_PLAN: Readonly<Record<string, string>> = {
  'planObjects.name': 'Por ejemplo, ventana de la cocina.',
  'planObjects.kind': 'Qué es. Decide qué separaciones se le piden.',
  'planObjects.corners':
    'Sus esquinas en el plano en orden: una de un punto, dos de una línea, más de un contorno.',
  'planObjects.bottom': 'Del suelo a su parte baja. Vacío: está en el suelo.',
  'planObjects.top': 'Del suelo a lo alto. Vacío: más alto que el calentador.',
  'planObjects.growth': 'Cuánto puede crecer un arbusto, o cuánto alcanza un aspersor.',
  'lifts.heater': 'El calentador que se levanta.',
  'lifts.by': 'Solo manos, o algo que cargue el peso.',
  'lifts.people': 'Cuántos levantan juntos.',
  'lifts.reach': 'Del medio entre los tobillos a las manos.',
  'lifts.from': 'Altura de las manos al empezar.',
  'lifts.to': 'Altura de las manos al dejarlo.',
  'lifts.twist': 'Cuánto gira el cuerpo mientras se sostiene.',
  'lifts.grip': 'Con asas es buena, con bordes para los dedos es regular, sin nada es mala.',
};
