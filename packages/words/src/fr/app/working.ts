/** Comment vient un résultat, et tous les résultats d’une ligne sur une même échelle. */
export const WORKING: Readonly<Record<string, string>> = {
  'app.working.show': 'Calcul',
  'app.working.of': 'Calcul : {title}',
  'app.working.title': 'Comment c’est calculé',
  'app.working.not-known': 'Pas encore connu.',
  'app.working.gone': 'Ce résultat n’est plus demandé.',
  'app.working.close': 'Le fermer',
  'app.working.ladder': 'Tous les résultats sur une échelle : {line}',
  'app.working-part.regulator-service': 'régulateur de service',
  'app.working-part.meter': 'compteur',
  'app.working-part.existing-load': 'tous les autres appareils',
  'app.working-part.supply': 'alimentation',
  'app.working-part.street': 'rue',
  'app.working-part.tee': 'un té',
};
