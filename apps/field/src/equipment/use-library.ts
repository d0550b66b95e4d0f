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
  readonly remove: (item: Item) => void;
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
  return {
    items: itemsOf(moment.view),
    keep: (items) => {
      session.edit(keepAll(moment.view, items, moment.document.created === undefined));
    },
    remove: ({ kind, id }) => {
      session.edit([{ type: 'remove', collection: kind, element: id }]);
    },
  };
}

function nothing(): () => void {
  return () => {};
}

function keepAll(view: JobView, items: readonly Omit<Item, 'id'>[], isNew: boolean): readonly Edit[] {
  const create: readonly Edit[] = isNew ? [{ type: 'create' }] : [];
  return [...create, ...items.flatMap((item) => keepEdits(view, item, () => freshId('e')))];
}
