/** A view that notes what was looked at, so that later one can ask whether another view would have shown the same. */
import type { JobView, RecordView } from '../facts/view.ts';

type Records = readonly RecordView[];

export class WatchedView implements JobView {
  readonly #view: JobView;
  readonly #lists = new Map<string, Records>();
  readonly #records = new Map<string, Map<string, RecordView>>();

  constructor(view: JobView) {
    this.#view = view;
  }

  all(collection: string): Records {
    const known = this.#lists.get(collection);
    if (known !== undefined) return known;
    const list = this.#view.all(collection);
    this.#lists.set(collection, list);
    return list;
  }

  record(collection: string, id: string): RecordView {
    const known = this.#records.get(collection) ?? new Map<string, RecordView>();
    this.#records.set(collection, known);
    const record = known.get(id) ?? this.#view.record(collection, id);
    known.set(id, record);
    return record;
  }

  /** Whether all that was looked at until now stands in the other view too. */
  isSameIn(view: JobView): boolean {
    for (const [collection, list] of this.#lists) {
      if (!isSameList(list, view.all(collection))) return false;
    }
    for (const [collection, records] of this.#records) {
      for (const [id, record] of records) {
        if (record !== view.record(collection, id) && !this.#lacks(view, collection, id)) return false;
      }
    }
    return true;
  }

  /** An edit makes another object of the record it touches, see `RecordView`; one that is not there is made each time. */
  #lacks(view: JobView, collection: string, id: string): boolean {
    return isAbsent(this.#view, collection, id) && isAbsent(view, collection, id);
  }
}

function isAbsent(view: JobView, collection: string, id: string): boolean {
  return !view.all(collection).some((record) => record.id === id);
}

function isSameList(one: Records, other: Records): boolean {
  return one === other || (one.length === other.length && one.every((record, i) => record === other[i]));
}
