/** What is said of a new version. */
export const UPDATE: Readonly<Record<string, string>> = {
  'app.update': 'Nouvelle version',
  'app.update-ready': 'Une nouvelle version est prête. La prendre quand le travail le permet.',
  'app.update-take': 'L’utiliser maintenant',
};
