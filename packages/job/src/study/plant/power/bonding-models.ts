/** What bonds the pool as a whole: the ground around it, and the metal that touches its water. */
import type { FactKey } from '../../facts/book.ts';
import { isLeaving } from '../../facts/heaters.ts';
import type { Where } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { passedOn } from '../passed-on.ts';
import { dependent } from './dependent.ts';

const of = (field: string): Where => ({ collection: 'bonding', id: '-', field });

/** Fact → field, and the kinds of perimeter it is asked of. */
const PERIMETER: readonly (readonly [name: string, field: string, of: readonly string[]])[] = [
  ['perimeter-points', 'points', ['shell steel', 'copper grid', 'copper ring']],
  ['perimeter-width', 'width', ['shell steel', 'copper grid']],
  ['grid-pitch', 'gridPitch', ['copper grid']],
  ['ring-distance', 'ringDistance', ['copper ring']],
  ['ring-depth', 'ringDepth', ['copper ring']],
];

export function bondingModels(view: JobView): readonly Model[] {
  return [
    passedOn(view, 'job/-/tingle', of('tingle')),
    passedOn(view, 'job/-/water-contact', of('waterContact')),
    passedOn(view, 'job/-/perimeter', of('perimeter')),
    ...PERIMETER.map(([name, field, kinds]) =>
      dependent(view, {
        fact: `job/-/${name}`,
        where: of(field),
        on: of('perimeter'),
        when: (perimeter) => kinds.includes(perimeter),
      }),
    ),
    metalHeaderModel(view),
  ];
}

/** Whether a heater with metal water headers goes and one without comes. */
function metalHeaderModel(view: JobView): Model {
  const fact: FactKey = 'job/-/metal-header';
  const heaters = view.all('heaters');
  const metal = (leaving: boolean, word: string): boolean =>
    heaters.some((one) => isLeaving(one) === leaving && one.reading('headerMetal')?.value === word);
  const word = metal(true, 'yes') && metal(false, 'no') ? 'leaves' : 'stays';
  return {
    id: 'power.metal-header',
    provides: [fact],
    parameters: [],
    missing: [],
    wrong: [],
    run: () => ({ ok: true, outputs: [{ fact, word }] }),
    explain: () => [],
  };
}
