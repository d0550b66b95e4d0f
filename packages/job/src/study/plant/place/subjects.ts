/** The faces of each heater, as subjects that have a clearance of their own. */
import { place } from '@firstfire/engine';
import type { Subject } from '@firstfire/reference';
import { plannedHeaters } from '../../facts/heaters.ts';
import type { JobView } from '../../facts/view.ts';
import { faceId, wordAt } from './sources.ts';

/** The phrase that names a face. */
const PHRASES: Readonly<Record<place.Face, string>> = {
  left: 'face-left',
  right: 'face-right',
  back: 'face-back',
  front: 'face-front',
  above: 'face-above',
};

export function faceSubjects(view: JobView): readonly Subject[] {
  return plannedHeaters(view).flatMap((id) => {
    const heater = wordAt(view, { collection: 'heaters', id, field: 'name' }) || id;
    return place.FACES.map(
      (face): Subject => ({
        scope: 'face',
        id: faceId(id, face),
        label: `${heater}, ${face}`,
        said: { phrase: PHRASES[face], slots: { heater } },
      }),
    );
  });
}
