/**
 * The models of a job and the facts they gave, kept from one study to the next: an edit makes anew only the lines that
 * looked at what it touched. For whoever studies one job again and again while it is edited; a study without it gives
 * the same.
 */
import type { JobView } from '../facts/view.ts';
import type { Model } from './model.ts';
import type { ModelFacts } from './model-facts.ts';
import { WatchedView } from './watched-view.ts';

/** Makes the models of one line. */
export type Models = (view: JobView) => readonly Model[];

interface Made {
  readonly watched: WatchedView;
  readonly models: readonly Model[];
}

interface Found {
  quick?: ModelFacts;
  /** With the ± of every reading. */
  full?: ModelFacts;
}

export class KeptModels {
  readonly #made = new Map<Models, Made>();
  readonly #found = new WeakMap<Model, Found>();

  models(make: Models, view: JobView): readonly Model[] {
    const last = this.#made.get(make);
    if (last?.watched.isSameIn(view)) return last.models;
    // Models look at readings when they run, too: the view they were made with goes on noting.
    const watched = new WatchedView(view);
    const models = make(watched);
    this.#made.set(make, { watched, models });
    return models;
  }

  facts(model: Model, uncertainty: boolean, work: () => ModelFacts): ModelFacts {
    const found = this.#found.get(model) ?? {};
    this.#found.set(model, found);
    const name = uncertainty ? 'full' : 'quick';
    const facts = found[name] ?? work();
    found[name] = facts;
    return facts;
  }
}
