/** What the flows of this state wait for, or why nothing can flow so. */

import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { ReadingLink } from '../ui/reading-link.tsx';
import type { Water } from './use-water.ts';

const SHOWN = 3;

export function Waiting({ water: { picture, state } }: { readonly water: Water }) {
  const text = useText();
  const { doc } = useSession();
  if (state?.flowing !== undefined) return null;
  const missing = state?.missing ?? picture.missing;
  const [issue] = state?.issues ?? [];
  return (
    <div className="notice water-waiting">
      {missing.length > 0 ? (
        <>
          <p>{text.phrase('water.waits', { count: missing.length })}</p>
          {missing.slice(0, SHOWN).map((path) => (
            <Link key={path} className="reading-link" href={`/jobs/${doc}/read/${path}`}>
              {text.path(path)}
            </Link>
          ))}
        </>
      ) : (
        <p>{text.phrase(issue?.reason === 'water-boils' ? 'water.boils' : 'water.no-solution')}</p>
      )}
      {missing.length === 0 && issue !== undefined && <ReadingLink path={issue.where} />}
    </div>
  );
}
