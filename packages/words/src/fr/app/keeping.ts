/** The list of jobs, and where the work is kept. */
export const KEEPING: Readonly<Record<string, string>> = {
  'app.keeping': 'Où est le travail',
  'app.export-all': 'Tout sortir dans un fichier',
  'app.import': 'Faire entrer un fichier',
  'app.exported': 'Un fichier a été remis. Travaux dedans : {count}.',
  'app.not-kept': 'L’appareil ne le garde pas ({reason}). Rien de ce qui était là n’a changé.',
  'app.file-place': 'Ligne {line}, colonne {column} : {said}',
  'app.put-away': 'Classés ({count})',
  'app.deleted': '« {name} » est supprimé. On peut le reprendre pendant un mois.',
  'app.next-reading': 'Ensuite : {reading}',
  'app.job-menu': 'Que faire de {name}',
  'app.job-work.export': 'Enregistrer dans un fichier',
  'app.job-work.copy': 'Copier',
  'app.job-work.archive': 'Classer',
  'app.job-work.take-out': 'Remettre dans la liste',
  'app.job-work.delete': 'Supprimer',
  'app.copy-of': '{name}, copie',
  'app.lost':
    'Le navigateur a effacé ce qui était gardé ici. Travaux perdus : {count}, dernier changement : {when}. Si un fichier en a été sorti, le faire entrer.',
  'app.came-back':
    'Le navigateur avait perdu du travail. Il est revenu de la seconde copie. Travaux : {count}.',
  'app.keeping-says': 'Tout ce qui est entré est gardé sur cet appareil. Travaux ici : {count}.',
  'app.keeping-files': 'Fichiers',
  'app.keeping-files-help':
    'Un fichier contient les travaux avec toute leur histoire, à garder ailleurs ou à mettre sur un autre appareil. Les photos restent sur cet appareil. Ce qui entre est joint à ce qui est là : rien n’est écrasé.',
  'app.keeping-deleted': 'Supprimés',
  'app.brought-in': '{name} : joint. Travaux dans le fichier : {jobs} ; inscriptions nouvelles : {count}.',
  'app.brought-nothing': '{name} : tout y était déjà.',
  'app.brought-left-out': 'Inscriptions inutilisables laissées de côté : {count}.',
  'app.file-refused': '{name} n’est pas entré et rien n’a changé. {said}',
  'app.copy-kept':
    'Une seconde copie à côté de la base de données la répare si elle est abîmée. Elle part quand le navigateur efface tout.',
  'app.copy-none': 'Ce navigateur ne garde pas de seconde copie à côté de la base de données.',
  'app.lasting.true': 'Le navigateur a accepté de ne pas l’effacer de lui-même.',
  'app.lasting.false': 'Le navigateur peut l’effacer quand la place manque. Un fichier est plus sûr.',
  'app.lasting.unasked':
    'Le navigateur sera prié de le garder durablement dès qu’il y aura du travail à garder.',
  'app.only-here': 'Travaux dont une part n’est dans aucun fichier : {count}.',
  'app.all-in-file': 'Tout le travail est aussi dans un fichier.',
  'app.nothing-to-export': 'Il n’y a encore rien à mettre dans un fichier.',
  'app.last-export': 'Dernier fichier : {date}.',
  'app.ill.full':
    'L’appareil est plein : ce qui est entré maintenant n’est qu’en mémoire. Sortir un fichier, puis faire de la place. Un nouvel essai se fait tout seul.',
  'app.ill.denied':
    'Le navigateur ne laisse rien garder ici, comme dans une fenêtre privée. Ce qui est entré n’est qu’en mémoire : sortir un fichier avant de fermer.',
  'app.ill.missing':
    'Ce navigateur ne peut rien garder. Ce qui est entré n’est qu’en mémoire : sortir un fichier avant de fermer.',
  'app.ill.newer':
    'Une version plus récente de l’application a servi sur cet appareil. Recharger la page pour l’utiliser. Ce qui est entré maintenant n’est qu’en mémoire.',
  'app.ill.silent':
    'La base de données ne répond pas. Fermer les autres onglets de l’application ou relancer le navigateur ; d’ici là, le travail n’est qu’en mémoire.',
  'app.ill.damaged':
    'La base de données de cet appareil est abîmée. La seconde copie sert là où il y en a une ; sortir un fichier maintenant.',
  'app.ill.failed':
    'L’appareil ne garde pas ce qui est entré : ce n’est qu’en mémoire. Un nouvel essai se fait tout seul ; sortir un fichier avant de fermer.',
  'app.lost-forget': 'Je sais, recommencer',
  'app.rows-hurt':
    'Inscriptions que l’appareil n’a pu rendre : {count}. Elles restent telles quelles ; la seconde copie est fouillée.',
  'app.not-now': 'Pas cette semaine',
  'app.deleted-on': 'le {date}',
  'app.bring-back': 'Remettre dans la liste',
  'app.bring-back-name': 'Reprendre {name}',
  'app.where.here': 'gardé ici seulement',
  'app.where.two': 'gardé en deux endroits',
  'app.where-open': '{where}. Où est le travail',
  'app.history': 'Valeurs antérieures',
  'app.history-none': 'Rien n’avait été entré.',
  'app.who.here': 'cet appareil',
  'app.who.other': 'un autre appareil',
  'app.written-by': '{who}, {when}',
  'app.taken-back': 'inconnu',
  'app.second-values': 'Entré sur deux appareils à l’insu l’un de l’autre :',
  'app.second-use': 'Prendre celle-ci',
  'app.second-use-name': 'Prendre {value}',
  'app.second-stands': 'vaut',
  'app.undo-refused': 'Pas annulé. {said}',
  'app.rebuild': 'Refaire la base de données d’après la seconde copie',
  'app.rebuild-failed': 'La seconde copie ne peut pas être lue ; rien n’a donc changé. Sortir un fichier.',
};
