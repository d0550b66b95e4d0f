/** What an issue says: what was found, and what would be right. */
import { REASONS } from './reasons.ts';

export const ISSUES: Readonly<Record<string, string>> = {
  'out-of-range': '{where} : {found} est hors de la plage {range}{because}.',
  'out-of-range.open': '{where} : {found} n’est pas possible{because}.',
  'not-finite': '{where} : {found} n’est pas un nombre avec lequel on peut calculer.',
  contradiction: '{where} : {reason}.',
  'contradiction.bare': '{where} : {was}ne s’accorde pas avec les autres valeurs ; permis : {range}.',
  because: ' : {reason}',
  limit: 'au plus {max}',
  'no-solution': '{where} : aucune solution pour ces valeurs{because}.',
  'not-converged':
    '{where} : le calcul ne s’est pas stabilisé ; les valeurs sont peut-être à la limite du physique.',
  'not-understood': '{where} : « {found} » n’a pas été compris{because}.{expected}',
  'ill-formed': '{where} : {reason}.{expected}',
  'ill-formed.bare': '{where} : « {found} » ne peut pas être écrit ici.{expected}',
  expected: ' Attendu : {list}.',
  'survey.not-a-collection':
    '{where} : un objet est attendu pour une seule chose, une liste d’objets pour plusieurs.',
  'survey.bad-name':
    '{where} : un nom que le journal ne peut pas contenir ; lettres, chiffres et traits d’union sont permis.',
  'survey.repeated-id': '{where} : cet identifiant apparaît deux fois dans la liste.',
  'survey.not-json': '{where} : la valeur n’est pas du JSON.',
  'write.bad-name': '{where} : un nom que le journal ne peut pas contenir.',
  'write.not-json': '{where} : la valeur n’est pas du JSON.',
  'write.element-exists': '{where} : cela existe déjà.',
  'write.element-missing': '{where} : cela n’existe pas.',
  'write.element-removed': '{where} : cela a été retiré ; le rétablir d’abord.',
  'write.document-exists': '{where} : le travail est déjà créé.',
  'write.other-document': '{where} : ceci a été écrit pour un autre travail.',
  'write.replica-cloned':
    '{where} : deux appareils ont écrit sous ce nom ; l’un doit continuer sous un nouveau.',
  'write.group-missing': '{where} : la modification à annuler n’est pas dans le journal, ou pas en entier.',
  'write.not-own-group': '{where} : quelqu’un d’autre a fait cette modification ; lui seul peut l’annuler.',
  'write.moved-on': '{where} : ceci a changé depuis, la modification ne peut donc plus être annulée.',
  'write.not-undoable': '{where} : une création et une inscription au registre demeurent.',
  ...REASONS,
};
