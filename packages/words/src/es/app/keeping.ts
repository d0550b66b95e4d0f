/** The list of jobs, and where the work is kept. */
export const KEEPING: Readonly<Record<string, string>> = {
  'app.keeping': 'Dónde está el trabajo',
  'app.keeping-says':
    'Hay {count} trabajos en este equipo, y en ningún otro lado salvo que se haya sacado un archivo. Un teléfono puede perder lo que guarda el navegador: saque un archivo al terminar el día.',
  'app.export-all': 'Sacar todo en un archivo',
  'app.import': 'Traer un archivo',
  'app.exported': 'Se entregó un archivo con {count} trabajos.',
  'app.brought-in': 'Se trajeron {count} trabajos y se unieron con lo que había.',
  'app.not-kept': 'El equipo no lo guarda ({reason}). Nada de lo que había ha cambiado.',
  'app.file-place': 'Línea {line}, columna {column}: {said}',
  'app.put-away': 'Archivados ({count})',
  'app.deleted': 'Se borró “{name}”. Puede recuperarse durante un mes.',
  'app.next-reading': 'Sigue: {reading}',
  'app.job-menu': 'Qué hacer con {name}',
  'app.job-work.export': 'Sacar como archivo',
  'app.job-work.copy': 'Copiar',
  'app.job-work.archive': 'Archivar',
  'app.job-work.take-out': 'Volver a sacar',
  'app.job-work.delete': 'Borrar',
  'app.copy-of': '{name}, copia',
  'app.lost':
    'El navegador borró lo que había aquí: {count} trabajos, cambiados por última vez el {when}. Si se sacó un archivo, tráigalo.',
  'app.came-back': 'Lo que el navegador perdió de {count} trabajos volvió de la segunda copia.',
};
