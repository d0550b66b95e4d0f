/** The next thing to measure: where to stand, how long it takes, what it settles, one tap away. */
import { Link } from 'wouter';
import { skipsOf } from '../entry/skips.ts';
import { roundsOf } from '../next/rounds.ts';
import { minutesOf, stationOf } from '../next/stations.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';

export function NextBar() {
  const { doc } = useSession();
  const now = useMoment();
  const skips = useSignal(skipsOf(doc));
  const text = useText();
  const { first, rest } = roundsOf(now, new Set(Object.keys(skips)));
  const next = first[0] ?? rest[0];
  if (next === undefined) return null;
  const minutes = Math.ceil(minutesOf(next.path));
  return (
    <footer className="next-bar">
      <div>
        <span>
          {text.phrase('next-where', { station: text.phrase(`station.${stationOf(next.path)}`), minutes })}
        </span>
        <strong>{text.path(next.path)}</strong>
        <span>{text.phrase('settles', { count: next.settles })}</span>
      </div>
      <Link className="button" href={`/jobs/${doc}/read/${next.path}`}>
        {text.phrase('enter')}
      </Link>
    </footer>
  );
}
