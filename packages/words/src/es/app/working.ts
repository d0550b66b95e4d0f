/** Cómo sale un resultado, y todos los resultados de una línea en una misma escala. */
export const WORKING: Readonly<Record<string, string>> = {
  'app.working.show': 'Cálculo',
  'app.working.of': 'Cálculo: {title}',
  'app.working.title': 'Cómo se calcula',
  'app.working.not-known': 'Aún no se sabe.',
  'app.working.gone': 'Ese resultado ya no se pregunta.',
  'app.working.close': 'Cerrarlo',
  'app.working.ladder': 'Todos los resultados en una escala: {line}',
  'app.working-part.regulator-service': 'regulador de servicio',
  'app.working-part.meter': 'medidor',
  'app.working-part.existing-load': 'todos los demás aparatos',
  'app.working-part.supply': 'suministro',
  'app.working-part.street': 'calle',
  'app.working-part.tee': 'una te',
};
