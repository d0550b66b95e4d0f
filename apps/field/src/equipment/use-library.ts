/** The library of this device, opened when somebody wants it. */
import type { Edit, JobView } from '@firstfire/job';
import { useEffect, useState, useSyncExternalStore } from 'react';
import type { JobSession } from '../session/job-session.ts';
import { freshId } from '../store/replica.ts';
import { useShop } from '../store/shop-context.ts';
import { type Item, itemsOf, keepEdits, LIBRARY } from './library.ts';

export interface Library {
  readonly items: readonly Item[];
  /** All in one group, or none. */
  readonly keep: (items: readonly Omit<Item, 'id'>[]) => void;
}

/** Undefined until it has been read. */
export function useLibrary(): Library | undefined {
  const shop = useShop();
  const [session, setSession] = useState<JobSession | undefined>();
  useEffect(() => {
    let isGone = false;
    shop.session(LIBRARY).then(
      (opened) => {
        if (!isGone) setSession(opened);
      },
      () => {},
    );
    return () => {
      isGone = true;
    };
  }, [shop]);
  const moment = useSyncExternalStore(session?.now.subscribe ?? nothing, () => session?.now.get());
  if (session === undefined || moment === undefined) return undefined;
  return libraryOf(session, moment.view);
}

export function libraryOf(session: JobSession, view: JobView): Library {
  return {
    items: itemsOf(view),
    keep: (items) => {
      editLibrary(
        session,
        items.flatMap((item) => keepEdits(view, item, () => freshId('e'))),
      );
    },
  };
}

/** Writes edits to the library as one group; the first of all creates it. */
export function editLibrary(session: JobSession, edits: readonly Edit[]): void {
  const isNew = session.now.get().document.created === undefined;
  session.edit(isNew ? [{ type: 'create' }, ...edits] : edits);
}

function nothing(): () => void {
  return () => {};
}
