/** The survey walk: what is still to be read, by where one stands; before leaving, what would be missed. */
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { beginRound } from '../entry/round.ts';
import { skipsOf } from '../entry/skips.ts';
import { isKnown, oldPipe } from '../next/old-pipe.ts';
import { type Stop, walkOf } from '../next/walk.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import '../flows/flows.css';

/** Readings shown of a station before it is opened. */
const FIRST = 6;

export function WalkPage() {
  const { doc } = useSession();
  const { study, view } = useMoment();
  const skips = useSignal(skipsOf(doc));
  const text = useText();
  const stops = walkOf(study, new Set(Object.keys(skips)));
  const first = stops[0]?.readings[0];
  const swap = view.record('job', '-').reading('kind')?.value === 'swap';
  return (
    <>
      <JobHeader back={`/jobs/${doc}`} />
      <SixColumns strip />
      <main className="page narrow">
        <h1>{text.phrase('walk')}</h1>
        <p className="second">
          {text.phrase('walk-left', {
            count: stops.reduce((sum, stop) => sum + stop.readings.length, 0),
            minutes: stops.reduce((sum, stop) => sum + stop.minutes, 0),
          })}
        </p>
        {swap && <Plates />}
        {stops.length === 0 && <p className="empty">{text.phrase('walk-done')}</p>}
        {stops.map((stop) => (
          <StopPart key={stop.station} stop={stop} />
        ))}
        <Skipped />
        {first !== undefined && (
          <Link className="button main walk-start" href={`/jobs/${doc}/read/${first.path}`}>
            {text.phrase('walk-start')}
          </Link>
        )}
      </main>
    </>
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
          <Link key={heater.id} className="button" href={`/jobs/${doc}/plate/heaters/${heater.id}`}>
            {text.phrase(heater.reading('planned')?.value === 'no' ? 'plate-old' : 'plate-new')}
          </Link>
        ))}
      </div>
      <OldPipe />
    </section>
  );
}

/** What says whether the old gas pipe carries the new heater, asked in one go. */
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

function StopPart({ stop }: { readonly stop: Stop }) {
  const { doc } = useSession();
  const text = useText();
  const { station, readings, minutes } = stop;
  return (
    <section className="stop" aria-label={text.phrase(`station.${station}`)}>
      <h2>{text.phrase(`station.${station}`)}</h2>
      <p className="second">{text.phrase('stop-left', { count: readings.length, minutes })}</p>
      <ul className="stop-list">
        {readings.slice(0, FIRST).map(({ path, settles }) => (
          <li key={path}>
            <Link className="reading" href={`/jobs/${doc}/read/${path}`}>
              <span>{text.path(path)}</span>
              <span className="second">{text.phrase('settles', { count: settles })}</span>
            </Link>
          </li>
        ))}
      </ul>
      {readings.length > FIRST && (
        <details>
          <summary>{text.phrase('more', { count: readings.length - FIRST })}</summary>
          <ul className="stop-list">
            {readings.slice(FIRST).map(({ path }) => (
              <li key={path}>
                <Link className="reading" href={`/jobs/${doc}/read/${path}`}>
                  <span>{text.path(path)}</span>
                </Link>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

/** What could not be got, so that it can be tried once more before leaving. */
function Skipped() {
  const { doc } = useSession();
  const text = useText();
  const skips = Object.entries(useSignal(skipsOf(doc)));
  if (skips.length === 0) return null;
  return (
    <section className="stop">
      <h2>{text.phrase('before-leaving')}</h2>
      <ul className="stop-list">
        {skips.map(([path]) => (
          <li key={path}>
            <Link className="reading" href={`/jobs/${doc}/read/${path}`}>
              <span>{text.path(path)}</span>
              <span className="second">{text.phrase('could-not-get')}</span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
