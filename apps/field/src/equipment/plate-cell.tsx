/** One field of a plate: its name small, what stands there large; empty, a dashed place to tap. */
import { Link } from 'wouter';
import { readingText } from '../entry/reading.ts';
import { beginRound, type Round } from '../entry/round.ts';
import type { FieldAt } from '../entry/understood.ts';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export interface PlateCellProps {
  readonly at: FieldAt;
  readonly round: Round;
}

export function PlateCell({ at, round }: PlateCellProps) {
  const { collection, id, field } = at;
  const { view } = useMoment();
  const text = useText();
  const reading = view.record(collection, id).reading(field);
  return (
    <Link
      className={reading === undefined ? 'plate-cell empty-cell' : 'plate-cell'}
      href={`/jobs/${round.doc}/read/${collection}/${id}/${field}`}
      onClick={() => beginRound(round, 'nameplate')}
    >
      <span className="plate-name">{text.field(collection, field)}</span>
      <strong>{reading === undefined ? text.phrase('enter') : readingText(reading, text)}</strong>
    </Link>
  );
}
