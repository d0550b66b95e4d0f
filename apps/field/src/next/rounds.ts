/** The two rounds of a survey: the readings that carry the most, then the rest, its questions by one tap each. */
import { type JobView, RECORD_BY_COLLECTION, type Study } from '@firstfire/job';
import { keyRules } from './first-round.ts';
import { type Missing, measureNext } from './measure-next.ts';

export interface JobNow {
  readonly view: JobView;
  readonly study: Study;
}

export interface Rounds {
  readonly first: readonly Missing[];
  readonly rest: readonly Missing[];
}

const NONE: ReadonlySet<string> = new Set();

/** What `skipped` names is left out: it could not be got. */
export function roundsOf({ view, study }: JobNow, skipped: ReadonlySet<string> = NONE): Rounds {
  const missing = measureNext(study, keyRules(view)).filter((one) => !skipped.has(one.path));
  return { first: missing.filter((one) => one.first), rest: missing.filter((one) => !one.first) };
}

/** Answers that still fit beside their question. */
const MOST_ANSWERS = 5;

/** The answers of a reading that one tap gives; undefined where it has to be taken or is one of many. */
export function answersOf(path: string): readonly string[] | undefined {
  const [collection = '', , field = ''] = path.split('/');
  const spec = RECORD_BY_COLLECTION.get(collection)?.fields[field];
  return spec?.type === 'choice' && spec.choices.length <= MOST_ANSWERS ? spec.choices : undefined;
}
