/** A fact that is asked for only where another reading says so. */
import type { FactKey } from '../../facts/book.ts';
import { SurveyReader, type Where } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { notApplicable, passedOn } from '../passed-on.ts';

export interface Dependent {
  readonly fact: FactKey;
  readonly where: Where;
  /** The reading that decides whether it is asked for. */
  readonly on: Where;
  readonly when: (word: string) => boolean;
}

/** Passed on where it is asked for; while nobody knows whether, the deciding reading is what is missing. */
export function dependent(view: JobView, { fact, where, on, when }: Dependent): Model {
  const decided = new SurveyReader(view).fact(on);
  if (decided.state !== 'word') return passedOn(view, fact, on);
  return when(decided.value) ? passedOn(view, fact, where) : notApplicable(fact);
}
