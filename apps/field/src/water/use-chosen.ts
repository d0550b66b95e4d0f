/** The part of the loop in hand, by its row in the list; kept in the address, so that Back from the keypad finds it. */
import { useCallback, useMemo, useState } from 'react';
import { useSearchParams } from 'wouter';

/** Where it was taken, and so where its readings open: under the picture, or in its row. */
export type From = 'picture' | 'list';

export interface Chosen {
  readonly id: string | undefined;
  readonly from: From;
  /** Takes a part in hand; the one that is in hand already is laid down. */
  readonly take: (id: string | undefined, from: From) => void;
}

export function useChosen(): Chosen {
  const [search, setSearch] = useSearchParams();
  const [from, setFrom] = useState<From>('picture');
  const id = search.get('part')?.replace('~', ' ');
  const take = useCallback(
    (next: string | undefined, where: From) => {
      setFrom(where);
      setSearch(
        (before) => {
          const after = new URLSearchParams(before);
          const part = next?.replace(' ', '~');
          if (part === undefined || part === before.get('part')) after.delete('part');
          else after.set('part', part);
          return after;
        },
        { replace: true },
      );
    },
    [setSearch],
  );
  return useMemo(() => ({ id, from, take }), [id, from, take]);
}
