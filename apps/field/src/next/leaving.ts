/** What one would miss after leaving the site: found from the job as it stands, the worst to forget first. */
import { closerBy, type FoldedDocument, type JobView, type Study } from '@firstfire/job';
import type { Finding } from '@firstfire/reference';
import { secondValues } from '../session/field-history.ts';
import { isKnown } from './old-pipe.ts';

export interface Wide {
  readonly finding: Finding;
  /** Readings behind it that can be measured again. */
  readonly readings: readonly string[];
}

/** A met limit that a closer measurement could settle, from a study that takes the ± into account. */
export function wideOf(view: JobView, { lines }: Study): readonly Wide[] {
  return lines
    .flatMap((line) => line.findings)
    .filter(({ verdict, tightBy }) => verdict === 'tight' && tightBy === 'uncertainty')
    .map((finding) => ({ finding, readings: behind(view, finding) }))
    .filter(({ readings }) => readings.length > 0);
}

/** As many as one takes again. */
const MOST = 3;

/** A plate and a drawing mean the figure they print: no second look makes it closer. */
function behind(view: JobView, finding: Finding): readonly string[] {
  const again = closerBy(view, finding).filter((path) => {
    const [collection = '', id = '', field = ''] = path.split('/');
    const how = view.record(collection, id).reading(field)?.how;
    return how !== undefined && how !== 'nameplate' && how !== 'drawing';
  });
  return again.slice(0, MOST);
}

/** Readings that two people wrote without sight of each other. */
export function conflictsOf(document: FoldedDocument): readonly string[] {
  const paths: string[] = [];
  for (const [collection, elements] of document.collections) {
    for (const { id, alive, fields } of elements.values()) {
      if (!alive) continue;
      for (const field of fields.keys()) {
        if (secondValues(document, { collection, id, field }).length > 0)
          paths.push(`${collection}/${id}/${field}`);
      }
    }
  }
  return paths;
}

/** Plates of which the device has a picture, or should: those of every heater and pump. */
export function platesOf(view: JobView): readonly string[] {
  return (['heaters', 'pumps'] as const).flatMap((collection) =>
    view.all(collection).map(({ id }) => `${collection}/${id}/plate`),
  );
}

/** What could not be got and still is not known. */
export function skippedOf(view: JobView, paths: readonly string[]): readonly string[] {
  return paths.filter((path) => !isKnown(view, path));
}
