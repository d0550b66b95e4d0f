/** How the device speaks. */
export const SETTINGS: Readonly<Record<string, string>> = {
  'app.settings': 'Settings',
  'app.settings.language': 'Language',
  'app.settings.numbers': 'Numbers',
  'app.settings.units': 'Units',
  'app.settings.theme': 'Screen',
  'app.units.us': 'US',
  'app.units.si': 'SI',
  'app.units.mixed': 'mixed, as the trade does',
  'app.theme.auto': 'as the device',
  'app.theme.light': 'daylight',
  'app.theme.dark': 'dark',
};
