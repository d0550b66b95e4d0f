/** The records of a collection by name, to pick from. */
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { type Pick, recordsOf } from './refers.ts';

export function usePicks(collection: string | undefined): readonly Pick[] {
  const { view } = useMoment();
  const text = useText();
  return collection === undefined ? [] : recordsOf(view, collection, text.record(collection));
}
