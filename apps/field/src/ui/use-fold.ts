/** What somebody opened or folded stays so, also when they come back to it, for as long as the tab lives. */
import { type ToggleEvent, useCallback, useState } from 'react';

const told = new Map<string, boolean>();

export interface Fold {
  readonly open: boolean;
  readonly onToggle: (event: ToggleEvent<HTMLDetailsElement>) => void;
}

export function useFold(key: string, isOpen: boolean): Fold {
  const [open, setOpen] = useState(() => told.get(key) ?? isOpen);
  const onToggle = useCallback(
    (event: ToggleEvent<HTMLDetailsElement>) => {
      const now = event.currentTarget.open;
      told.set(key, now);
      setOpen(now);
    },
    [key],
  );
  return { open, onToggle };
}
