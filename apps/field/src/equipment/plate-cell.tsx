/** One field of a plate: its name small, what stands there large; empty, a dashed place to tap. */
import { Link } from 'wouter';
import { readingText } from '../entry/reading.ts';
import type { FieldAt } from '../entry/understood.ts';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export interface PlateCellProps {
  readonly at: FieldAt;
  /** Address where it is entered. */
  readonly href: string;
  readonly onOpen?: () => void;
  /** How many findings wait for it. */
  readonly settles?: number;
}

export function PlateCell({ at, href, onOpen, settles = 0 }: PlateCellProps) {
  const { collection, id, field } = at;
  const { view } = useMoment();
  const text = useText();
  const reading = view.record(collection, id).reading(field);
  return (
    <Link
      className={reading === undefined ? 'plate-cell empty-cell' : 'plate-cell'}
      href={href}
      onClick={() => onOpen?.()}
    >
      <span className="plate-name">{text.field(collection, field)}</span>
      <strong>{reading === undefined ? text.phrase('enter') : readingText(reading, text)}</strong>
      {reading === undefined && settles > 0 && (
        <span className="plate-settles">{text.phrase('settles', { count: settles })}</span>
      )}
    </Link>
  );
}
