/** The survey walk: what is still to be read, by where one stands; before leaving, what would be missed. */
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { beginRound } from '../entry/round.ts';
import { skipsOf } from '../entry/skips.ts';
import { FirstStop, RestStops } from '../flows/walk-stops.tsx';
import { isKnown, oldPipe } from '../next/old-pipe.ts';
import { type Rounds, roundsOf } from '../next/rounds.ts';
import { walkOf } from '../next/walk.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import '../flows/flows.css';

export function WalkPage() {
  const { doc } = useSession();
  const now = useMoment();
  const skips = useSignal(skipsOf(doc));
  const text = useText();
  const rounds = roundsOf(now, new Set(Object.keys(skips)));
  const stops = walkOf(rounds.first);
  const first = stops[0]?.readings[0];
  const swap = now.view.record('job', '-').reading('kind')?.value === 'swap';
  return (
    <>
      <JobHeader back={`/jobs/${doc}`} />
      <SixColumns strip />
      <main className="page narrow">
        <h1>{text.phrase('walk')}</h1>
        <Left rounds={rounds} minutes={stops.reduce((sum, stop) => sum + stop.minutes, 0)} />
        <Link className="button plain walk-leaving" href={`/jobs/${doc}/leaving`}>
          {text.phrase('before-leaving')}
        </Link>
        {swap && <Plates />}
        {stops.map((stop) => (
          <FirstStop key={stop.station} stop={stop} />
        ))}
        <RestStops rest={rounds.rest} />
        {first !== undefined && (
          <Link className="button main walk-start" href={`/jobs/${doc}/read/${first.path}`}>
            {text.phrase('walk-start')}
          </Link>
        )}
      </main>
    </>
  );
}

function Left({ rounds: { first, rest }, minutes }: { readonly rounds: Rounds; readonly minutes: number }) {
  const text = useText();
  if (first.length + rest.length === 0) return <p className="empty">{text.phrase('walk-done')}</p>;
  if (first.length === 0)
    return <p className="second">{text.phrase('walk-first-done', { rest: rest.length })}</p>;
  return (
    <p className="second">{text.phrase('walk-left', { count: first.length, minutes, rest: rest.length })}</p>
  );
}

/** A swap begins with what both plates say. */
function Plates() {
  const { doc } = useSession();
  const { view } = useMoment();
  const text = useText();
  return (
    <section aria-label={text.phrase('plates')}>
      <h2>{text.phrase('plates')}</h2>
      <div className="plates">
        {view.all('heaters').map((heater) => (
          <Link key={heater.id} className="button" href={`/jobs/${doc}/plate/heaters/${heater.id}/all`}>
            {text.phrase(heater.reading('planned')?.value === 'no' ? 'plate-old' : 'plate-new')}
          </Link>
        ))}
      </div>
      <OldPipe />
    </section>
  );
}

/** What says whether the old pipes carry the new heater, asked in one go. */
function OldPipe() {
  const { doc } = useSession();
  const { view } = useMoment();
  const text = useText();
  const paths = oldPipe(view);
  const first = paths.find((path) => !isKnown(view, path)) ?? paths[0];
  return (
    <Link
      className="button old-pipe"
      href={`/jobs/${doc}/read/${first}`}
      onClick={() => beginRound({ doc, paths, back: `/jobs/${doc}/walk`, called: 'old-pipe' }, 'measured')}
    >
      {text.phrase('old-pipe-readings', { count: paths.length })}
    </Link>
  );
}
