/** What is said of a new version. */
export const UPDATE: Readonly<Record<string, string>> = {
  'app.update': 'Versión nueva',
  'app.update-ready': 'Hay una versión nueva lista. Tómela cuando el trabajo lo permita.',
  'app.update-take': 'Usarla ahora',
};
