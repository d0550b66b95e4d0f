/**
 * What the picture of the heat line showed last, kept while the job is edited: a basin is worked out anew only when
 * something it looked at is another. The wanted hour alone changes no physics: it is set beside what is kept.
 */
import { RECORD_BY_COLLECTION } from '../../schema/index.ts';
import type { JobView, RecordView } from '../facts/view.ts';
import { WatchedView } from '../plant/watched-view.ts';

const BASINS = 'basins';
const WANTED = 'warmUpTime';
const OTHERS = Object.keys(RECORD_BY_COLLECTION.get(BASINS)?.fields ?? {}).filter(
  (field) => field !== WANTED,
);

interface Kept<T> {
  readonly watched: WatchedView;
  readonly made: T;
}

export class KeptBasins<T> {
  readonly #steady = new Map<string, RecordView>();
  readonly #kept = new Map<string, Kept<T>>();

  /** What `make` gives for a basin of a job whose wanted hours are left out. */
  of(view: JobView, id: string, make: (view: JobView) => T): T {
    const last = this.#kept.get(id);
    const unhurried = this.#unhurried(view);
    if (last?.watched.isSameIn(unhurried)) return last.made;
    const watched = new WatchedView(unhurried);
    const made = make(watched);
    this.#kept.set(id, { watched, made });
    return made;
  }

  /** The job without its wanted hours; a basin of which nothing else changed is the same object again. */
  #unhurried(view: JobView): JobView {
    const list = view.all(BASINS).map((record) => this.#steadyOf(record));
    return {
      all: (collection) => (collection === BASINS ? list : view.all(collection)),
      record: (collection, id) =>
        (collection === BASINS ? list.find((one) => one.id === id) : undefined) ??
        view.record(collection, id),
    };
  }

  #steadyOf(record: RecordView): RecordView {
    const last = this.#steady.get(record.id);
    if (last !== undefined && OTHERS.every((field) => last.reading(field) === record.reading(field)))
      return last;
    const { id } = record;
    const steady: RecordView = {
      id,
      reading: (field) => (field === WANTED ? undefined : record.reading(field)),
    };
    this.#steady.set(id, steady);
    return steady;
  }
}
