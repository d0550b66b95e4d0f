/** The permit of each kind of work: asked for before it begins, granted before anything is set. A repair asks for none. */
import { type AnyRule, defineRule, type Edition, type FactName, type Line } from '../../evaluate/index.ts';
import { b149, ifgc2015, NO_SECTION } from '../entries.ts';
import { c22 } from '../power/sources.ts';

/** Stages at which it is enough that it has been asked for. */
const BEFORE_WORK: ReadonlySet<string> = new Set(['', 'survey', 'plan']);

interface Permit {
  readonly id: string;
  readonly line: Line;
  readonly fact: FactName;
  readonly editions: readonly Edition<Record<string, never>>[];
}

function permit({ fact, ...rule }: Permit): AnyRule {
  return defineRule({
    ...rule,
    scope: 'job',
    numbers: {},
    words: { state: fact, stage: 'job.stage', kind: 'job.kind' },
    optional: ['state', 'stage', 'kind'],
    check: (_n, w) => {
      if (w.kind === 'service' && w.state === '') return { sense: 'does-not-apply' };
      if (w.state === '') return { sense: 'unread' };
      if (w.state === 'not needed')
        return { sense: 'does-not-apply', because: { reason: 'permit-not-needed' } };
      const enough = w.state === 'granted' || (w.state === 'asked' && BEFORE_WORK.has(w.stage));
      const waits = w.state === 'asked' && !enough;
      return {
        sense: 'holds',
        holds: enough,
        ...(waits && { because: { reason: 'permit-not-granted-yet' } }),
      };
    },
  });
}

/** What every state, province and town sets for itself: only that there is such a permit is common. */
function byPlace(at: string): Edition<Record<string, never>> {
  return {
    edition: 'any',
    from: '1900-01-01',
    source: { document: 'Law of the place', at, known: 'common practice, no source' },
    values: {},
  };
}

export const gasPermit = permit({
  id: 'gas.permit',
  line: 'gas',
  fact: 'job.permit-gas',
  editions: [
    byPlace('permit or notice for gas work'),
    ifgc2015('106.1', {}),
    b149(`permit or notice under the province’s gas law, ${NO_SECTION}`, {}),
  ],
});

export const electricalPermit = permit({
  id: 'power.permit',
  line: 'power',
  fact: 'job.permit-electrical',
  editions: [byPlace('permit for electrical work'), c22('rule 2-004', {})],
});

export const buildingPermit = permit({
  id: 'place.permit',
  line: 'place',
  fact: 'job.permit-building',
  editions: [byPlace('building or mechanical permit for an appliance that is set or replaced')],
});
