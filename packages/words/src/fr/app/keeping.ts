/** The list of jobs, and where the work is kept. */
export const KEEPING: Readonly<Record<string, string>> = {
  'app.keeping': 'Où est le travail',
  'app.keeping-says':
    '{count} travaux sont sur cet appareil, et nulle part ailleurs sauf si un fichier a été sorti. Un téléphone peut perdre ce que garde le navigateur : sortir un fichier à la fin de la journée.',
  'app.export-all': 'Tout sortir dans un fichier',
  'app.import': 'Faire entrer un fichier',
  'app.exported': 'Un fichier de {count} travaux a été remis.',
  'app.brought-in': '{count} travaux sont entrés et ont été joints à ce qui était là.',
  'app.not-kept': 'L’appareil ne le garde pas ({reason}). Rien de ce qui était là n’a changé.',
  'app.file-place': 'Ligne {line}, colonne {column} : {said}',
  'app.put-away': 'Classés ({count})',
  'app.deleted': '« {name} » est supprimé. On peut le reprendre pendant un mois.',
  'app.next-reading': 'Ensuite : {reading}',
  'app.job-menu': 'Que faire de {name}',
  'app.job-work.export': 'Sortir dans un fichier',
  'app.job-work.copy': 'Copier',
  'app.job-work.archive': 'Classer',
  'app.job-work.take-out': 'Reprendre',
  'app.job-work.delete': 'Supprimer',
  'app.copy-of': '{name}, copie',
  'app.lost':
    'Le navigateur a effacé ce qui était gardé ici : {count} travaux, modifiés la dernière fois le {when}. Si un fichier en a été sorti, le faire entrer.',
  'app.came-back': 'Ce que le navigateur avait perdu de {count} travaux est revenu de la seconde copie.',
};
