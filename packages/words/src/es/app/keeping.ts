/** The list of jobs, and where the work is kept. */
export const KEEPING: Readonly<Record<string, string>> = {
  'app.keeping': 'Dónde está el trabajo',
  'app.export-all': 'Sacar todo en un archivo',
  'app.import': 'Traer un archivo',
  'app.exported': 'Se entregó un archivo. Trabajos en él: {count}.',
  'app.not-kept': 'El equipo no lo guarda ({reason}). Nada de lo que había ha cambiado.',
  'app.file-place': 'Línea {line}, columna {column}: {said}',
  'app.put-away': 'Archivados ({count})',
  'app.deleted': 'Se borró “{name}”. Puede recuperarse durante un mes.',
  'app.next-reading': 'Sigue: {reading}',
  'app.job-menu': 'Qué hacer con {name}',
  'app.job-work.export': 'Guardar como archivo',
  'app.job-work.copy': 'Copiar',
  'app.job-work.archive': 'Archivar',
  'app.job-work.take-out': 'Devolver a la lista',
  'app.job-work.delete': 'Borrar',
  'app.copy-of': '{name}, copia',
  'app.lost':
    'El navegador borró lo que había aquí. Trabajos perdidos: {count}, último cambio: {when}. Si se sacó un archivo, tráigalo.',
  'app.came-back': 'El navegador había perdido trabajo. Volvió de la segunda copia. Trabajos: {count}.',
  'app.keeping-says': 'Todo lo introducido está guardado en este equipo. Trabajos aquí: {count}.',
  'app.keeping-files': 'Archivos',
  'app.keeping-files-help':
    'Un archivo contiene los trabajos con toda su historia, para guardarlo en otro lado o llevarlo a otro equipo. Las fotos se quedan en este equipo. Lo que entra se une con lo que hay: nada se sobrescribe.',
  'app.keeping-deleted': 'Borrados',
  'app.brought-in': '{name}: unido. Trabajos en el archivo: {jobs}; entradas nuevas: {count}.',
  'app.brought-nothing': '{name}: todo estaba aquí ya.',
  'app.brought-left-out': 'Entradas que no se pudieron usar y se dejaron fuera: {count}.',
  'app.file-refused': '{name} no se trajo y nada ha cambiado. {said}',
  'app.copy-kept':
    'Una segunda copia junto a la base de datos la repara si se daña. Se pierde cuando el navegador lo borra todo.',
  'app.copy-none': 'Este navegador no guarda una segunda copia junto a la base de datos.',
  'app.lasting.true': 'El navegador aceptó no borrarlo por su cuenta.',
  'app.lasting.false': 'El navegador puede borrarlo cuando falte espacio. Un archivo es más seguro.',
  'app.lasting.unasked':
    'Al navegador se le pide guardarlo de forma duradera cuando haya trabajo que guardar.',
  'app.only-here': 'Trabajos con datos que no están en ningún archivo: {count}.',
  'app.all-in-file': 'Todo el trabajo está también en un archivo.',
  'app.nothing-to-export': 'Aún no hay trabajo que un archivo pueda contener.',
  'app.last-export': 'Último archivo: {date}.',
  'app.ill.full':
    'El equipo está lleno: lo que se introduce ahora está solo en memoria. Saque un archivo y luego libere espacio. Se vuelve a intentar por sí solo.',
  'app.ill.denied':
    'El navegador no deja guardar nada aquí, como en una ventana privada. Lo introducido está solo en memoria: saque un archivo antes de cerrar.',
  'app.ill.missing':
    'Este navegador no puede guardar nada. Lo introducido está solo en memoria: saque un archivo antes de cerrar.',
  'app.ill.newer':
    'En este equipo estuvo una versión más nueva de la aplicación. Recargue la página para usarla. Lo que se introduce ahora está solo en memoria.',
  'app.ill.silent':
    'La base de datos no responde. Cierre otras pestañas de la aplicación o reinicie el navegador; hasta entonces el trabajo está solo en memoria.',
  'app.ill.damaged':
    'La base de datos de este equipo está dañada. Se usa la segunda copia donde la hay; saque un archivo ahora.',
  'app.ill.failed':
    'El equipo no guarda lo introducido: está solo en memoria. Se vuelve a intentar por sí solo; saque un archivo antes de cerrar.',
  'app.lost-forget': 'Lo sé, empezar de nuevo',
  'app.rows-hurt':
    'Entradas que el equipo no pudo devolver: {count}. Se dejaron como están; se buscan en la segunda copia.',
  'app.not-now': 'Esta semana no',
  'app.deleted-on': 'el {date}',
  'app.bring-back': 'Recuperar',
  'app.bring-back-name': 'Recuperar {name}',
  'app.where.here': 'guardado solo aquí',
  'app.where.two': 'guardado en dos lugares',
  'app.where-open': '{where}. Dónde está el trabajo',
  'app.history': 'Valores anteriores',
  'app.history-none': 'Antes no se introdujo nada.',
  'app.who.here': 'este equipo',
  'app.who.other': 'otro equipo',
  'app.written-by': '{who}, {when}',
  'app.taken-back': 'no se sabe',
  'app.second-values': 'Introducido en dos equipos sin saber uno del otro:',
  'app.second-use': 'Usar este',
  'app.second-use-name': 'Usar {value}',
  'app.second-stands': 'vale',
  'app.undo-refused': 'No se deshizo. {said}',
  'app.rebuild': 'Hacer una base de datos nueva con la segunda copia',
  'app.rebuild-failed': 'No se puede leer la segunda copia, así que nada ha cambiado. Saque un archivo.',
};
