/** Models that need no figures: of what a job does not have, and of what nobody has said enough about. */
import type { FactKey } from '../../facts/book.ts';
import type { ReadingPath } from '../../facts/view.ts';
import type { Model } from '../model.ts';

export function notApplicableModel(provides: readonly FactKey[]): Model {
  return {
    ...nothing(provides),
    run: () => ({ ok: true, outputs: provides.map((fact) => ({ fact, notApplicable: true })) }),
  };
}

export function unknownModel(provides: readonly FactKey[], missing: readonly ReadingPath[]): Model {
  return { ...nothing(provides), missing };
}

function nothing(provides: readonly FactKey[]): Model {
  return {
    id: `none.${provides[0] ?? ''}`,
    provides,
    parameters: [],
    missing: [],
    wrong: [],
    run: () => ({ ok: true, outputs: [] }),
    explain: () => [],
  };
}
