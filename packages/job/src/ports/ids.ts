/** Fresh ids: for a document, a replica, an element. */
import { isElementId, isReplica } from '../log/names.ts';
import { type AcceptanceCase, expectHeld } from './acceptance.ts';

export interface Ids {
  /** An id nobody else has or ever will have, of letters and digits, beginning with a letter. */
  next(): string;
}

export const idsAcceptance: readonly AcceptanceCase<Ids>[] = [
  {
    name: 'gives ids that fit every place an id is written',
    run(ids) {
      for (let i = 0; i < 100; i++) {
        const id = ids.next();
        expectHeld(isElementId(id) && isReplica(id) && /^[A-Za-z][A-Za-z0-9]*$/.test(id), `unfit id ${id}`);
      }
    },
  },
  {
    name: 'never gives one twice',
    run(ids) {
      const seen = new Set(Array.from({ length: 10_000 }, () => ids.next()));
      expectHeld(seen.size === 10_000, `only ${seen.size} different ids in 10000`);
    },
  },
];
