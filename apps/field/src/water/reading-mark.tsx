/** A reading that is missing, marked where it belongs: one tap from being entered. */
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import type { Mark } from './missing-marks.ts';

export function ReadingMark({ mark: { path, x, y } }: { readonly mark: Mark }) {
  const { doc } = useSession();
  const text = useText();
  const label = text.phrase('water.missing', { reading: text.path(path) });
  return (
    <Link
      className="water-mark"
      href={`/jobs/${doc}/read/${path}`}
      aria-label={label}
      title={label}
      style={{ left: x - 22, top: y - 22 }}
    >
      ?
    </Link>
  );
}
