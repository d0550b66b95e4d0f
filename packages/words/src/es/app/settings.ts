/** How the device speaks. */
export const SETTINGS: Readonly<Record<string, string>> = {
  'app.settings': 'Ajustes',
  'app.settings.language': 'Idioma',
  'app.settings.numbers': 'Números',
  'app.settings.units': 'Unidades',
  'app.settings.theme': 'Pantalla',
  'app.units.us': 'de Estados Unidos',
  'app.units.si': 'SI',
  'app.units.mixed': 'mezcladas, como en el oficio',
  'app.theme.auto': 'como el equipo',
  'app.theme.light': 'claro',
  'app.theme.dark': 'oscuro',
};
