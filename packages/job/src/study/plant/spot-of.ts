/** The spot a heater stands on. */
import type { JobView } from '../facts/view.ts';

/** Id of the spot that names the heater; the only unnamed one of the only heater; else one that has yet to be surveyed. */
export function spotOf(view: JobView, heater: string): string {
  const spots = view.all('spots');
  const named = spots.find((one) => one.reading('heater')?.value === heater);
  if (named !== undefined) return named.id;
  const [first, ...more] = spots;
  return first !== undefined && more.length === 0 && first.reading('heater') === undefined
    ? first.id
    : `of-${heater}`;
}
