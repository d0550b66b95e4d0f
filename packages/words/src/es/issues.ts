/** What an issue says: what was found, and what would be right. */
import { REASONS } from './reasons.ts';

export const ISSUES: Readonly<Record<string, string>> = {
  'out-of-range': '{where}: {found} está fuera del rango {range}{because}.',
  'out-of-range.open': '{where}: {found} no puede ser{because}.',
  'not-finite': '{where}: {found} no es un número con el que se pueda calcular.',
  contradiction: '{where}: {reason}.',
  'contradiction.bare': '{where}: {was}no concuerda con los demás valores; se admite: {range}.',
  because: ': {reason}',
  limit: 'como máximo {max}',
  'no-solution': '{where}: no hay solución para estos valores{because}.',
  'not-converged':
    '{where}: el cálculo no llegó a estabilizarse; los valores pueden estar al límite de lo físico.',
  'not-understood': '{where}: “{found}” no se entendió{because}.{expected}',
  'ill-formed': '{where}: {reason}.{expected}',
  'ill-formed.bare': '{where}: “{found}” no puede estar aquí.{expected}',
  expected: ' Se espera: {list}.',

  // A survey that cannot become a log.
  'survey.not-a-collection':
    '{where}: se espera un objeto para una cosa única, una lista de objetos para varias.',
  'survey.bad-name': '{where}: un nombre que la bitácora no admite; puede llevar letras, cifras y guiones.',
  'survey.repeated-id': '{where}: este identificador está dos veces en la lista.',
  'survey.not-json': '{where}: el valor no es JSON.',

  // An edit that is refused.
  'write.bad-name': '{where}: un nombre que la bitácora no admite.',
  'write.not-json': '{where}: el valor no es JSON.',
  'write.element-exists': '{where}: esto ya está.',
  'write.element-missing': '{where}: esto no está.',
  'write.element-removed': '{where}: esto se eliminó; restaurarlo primero.',
  'write.document-exists': '{where}: el trabajo ya se creó.',
  'write.other-document': '{where}: esto se escribió para otro trabajo.',
  'write.replica-cloned':
    '{where}: dos dispositivos escribieron con este nombre; uno debe seguir con otro nuevo.',
  'write.group-missing': '{where}: el cambio por deshacer no está en la bitácora, o no está completo.',
  'write.not-own-group': '{where}: este cambio lo hizo otra persona; solo ella puede deshacerlo.',
  'write.moved-on': '{where}: esto cambió después, y el cambio ya no se puede deshacer.',
  'write.not-undoable': '{where}: una creación y un asiento del acta quedan para siempre.',
  ...REASONS,
};
