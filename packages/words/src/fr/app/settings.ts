/** How the device speaks. */
export const SETTINGS: Readonly<Record<string, string>> = {
  'app.settings': 'Réglages',
  'app.settings.language': 'Langue',
  'app.settings.numbers': 'Nombres',
  'app.settings.units': 'Unités',
  'app.settings.theme': 'Écran',
  'app.units.us': 'des États-Unis',
  'app.units.si': 'SI',
  'app.units.mixed': 'mêlées, comme dans le métier',
  'app.theme.auto': 'comme l’appareil',
  'app.theme.light': 'clair',
  'app.theme.dark': 'sombre',
};
