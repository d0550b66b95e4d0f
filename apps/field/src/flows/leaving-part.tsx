/** One kind of thing that would be missed, with its rows; nothing where there are none. */
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

export interface LeavingPartProps {
  /** Name of its phrase. */
  readonly called: string;
  readonly count: number;
  readonly children: ReactNode;
}

export function LeavingPart({ called, count, children }: LeavingPartProps) {
  const text = useText();
  if (count === 0) return null;
  return (
    <section className="stop" aria-label={text.phrase(`leaving-part.${called}`)}>
      <h2>{text.phrase(`leaving-part.${called}`)}</h2>
      <p className="second">{text.phrase(`leaving-why.${called}`)}</p>
      <ul className="stop-list">{children}</ul>
    </section>
  );
}

export function ReadingRow({ path, beside }: { readonly path: string; readonly beside?: string }) {
  const { doc } = useSession();
  const text = useText();
  return (
    <li>
      <Link className="reading" href={`/jobs/${doc}/read/${path}`}>
        <span>{text.path(path)}</span>
        {beside !== undefined && <span className="second">{beside}</span>}
      </Link>
    </li>
  );
}
