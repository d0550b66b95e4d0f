/** Nameplates and the equipment kept on the device. */
export const NAMEPLATE: Readonly<Record<string, string>> = {
  'app.plate': 'la plaque',
  'app.plate-of': '{name} : plaque signalétique',
  'app.plate-where.heaters':
    'Derrière la porte, sur le côté ou derrière le panneau avant. La photographier d’abord, puis la lire sur la photo.',
  'app.plate-where.pumps':
    'Sur le dessus ou le côté du moteur. La photographier d’abord, puis la lire sur la photo.',
  'app.plate-part.what': 'Ce que c’est',
  'app.plate-part.heat': 'Débit calorifique',
  'app.plate-part.gas': 'Pression de gaz',
  'app.plate-part.water': 'Eau',
  'app.plate-part.power': 'Électricité',
  'app.plate-part.clearances': 'Dégagements',
  'app.plate-instructions': 'D’après ses instructions',
  'app.equipment': 'Équipements sur cet appareil',
  'app.equipment-help':
    'Ce qui a été lu une fois n’est plus à lire : le garder sous un nom, le reprendre au prochain travail.',
  'app.equipment-name': 'Nom sous lequel le garder',
  'app.equipment-keep': 'Garder comme équipement : {count} lectures',
  'app.equipment-kept': 'Gardé : {name}.',
  'app.equipment-none': 'Rien de ce genre n’est encore gardé.',
  'app.equipment-readings': '{count} lectures',
  'app.equipment-take': 'Prendre',
  'app.equipment-remove': 'Retirer {name} des équipements',
  'app.csv-out': 'Enregistrer en CSV',
  'app.csv-in': 'Lire un CSV',
  'app.csv-taken': 'Lus : {count}.',
  'app.csv-refused': 'Rien n’a été lu. À corriger : {count}.',
  'app.csv-more': 'Et encore {count}.',
  'app.csv-fault.not-a-table':
    'La ligne {row} n’est pas une ligne de tableau : un guillemet manque peut-être.',
  'app.csv-fault.unknown-column':
    'Ligne {row} : il n’y a pas de colonne « {found} ». Les colonnes sont {columns} et d’autres champs, tels que les écrit Enregistrer en CSV.',
  'app.csv-fault.missing-column': 'Ligne {row} : la colonne « {found} » manque.',
  'app.csv-fault.unknown-kind': 'Ligne {row} : « {found} » n’est pas un genre. Les genres sont {kinds}.',
  'app.csv-fault.no-name': 'La ligne {row} n’a pas de nom.',
  'app.csv-fault.twice': 'Ligne {row} : « {found} » y est deux fois.',
  'app.csv-fault.not-of-kind': 'Ligne {row}, {column} : {record} n’a pas ce champ.',
  'app.csv-fault.cell': 'Ligne {row}, {column} : {why}',
};
