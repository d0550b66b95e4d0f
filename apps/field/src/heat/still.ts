/** Parts of the picture that a flag does not move: they are painted again only when something else of the basin changed. */
import type { HeatBasinShown } from '@firstfire/job';
import { memo } from 'react';

interface BasinProps {
  readonly basin: HeatBasinShown;
}

const MOVED_BY_FLAG: ReadonlySet<string> = new Set(['wanted', 'sizes'] satisfies (keyof HeatBasinShown)[]);

/** The same component, still while only the wanted hour moves. */
export function still<P extends BasinProps>(Part: (props: P) => React.ReactNode) {
  return memo(Part, (before, after) =>
    Object.keys(after).every((name) => {
      if (name === 'basin') return isSameBasin(before.basin, after.basin);
      return before[name as keyof P] === after[name as keyof P];
    }),
  );
}

function isSameBasin(one: HeatBasinShown, other: HeatBasinShown): boolean {
  return Object.entries(other).every(
    ([name, value]) => MOVED_BY_FLAG.has(name) || one[name as keyof HeatBasinShown] === value,
  );
}
