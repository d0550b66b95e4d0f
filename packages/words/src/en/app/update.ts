/** What is said of a new version. */
export const UPDATE: Readonly<Record<string, string>> = {
  'app.update': 'New version',
  'app.update-ready': 'A new version is ready. Take it when the work allows.',
  'app.update-take': 'Use it now',
};
