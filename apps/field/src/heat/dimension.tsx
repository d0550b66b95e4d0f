/** A measure on a drawing: a tap enters it. */
import { Link } from 'wouter';
import { readingText } from '../entry/reading.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

interface DimensionProps {
  readonly basin: string;
  readonly field: string;
  /** Its middle on the drawing. */
  readonly x: number;
  readonly y: number;
}

export function Dimension({ basin, field, x, y }: DimensionProps) {
  const text = useText();
  const { doc } = useSession();
  const { view } = useMoment();
  const reading = view.record('basins', basin).reading(field);
  return (
    <Link
      className={reading === undefined ? 'heat-dimension missing' : 'heat-dimension'}
      style={{ left: x, top: y }}
      href={`/jobs/${doc}/read/basins/${basin}/${field}`}
    >
      <span className="sr">{text.field('basins', field)} </span>
      {reading === undefined ? '?' : readingText(reading, text)}
    </Link>
  );
}
