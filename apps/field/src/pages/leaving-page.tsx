/** Before leaving the site: what can only be got here and is still missing, each a tap from being got. */
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { skipsOf } from '../entry/skips.ts';
import { LeavingPart, ReadingRow } from '../flows/leaving-part.tsx';
import { conflictsOf, skippedOf } from '../next/leaving.ts';
import { roundsOf } from '../next/rounds.ts';
import { useUnpictured, useWide } from '../next/use-leaving.ts';
import { type Stop, walkOf } from '../next/walk.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import { ReadingLink } from '../ui/reading-link.tsx';
import '../flows/flows.css';

export default function LeavingPage() {
  const { doc } = useSession();
  const now = useMoment();
  const text = useText();
  const skips = useSignal(skipsOf(doc));
  const { first, rest } = roundsOf(now, new Set(Object.keys(skips)));
  const stops = walkOf([...first, ...rest]).filter(({ station }) => station !== 'desk');
  const skipped = skippedOf(now.view, Object.keys(skips));
  const conflicts = conflictsOf(now.document);
  const unpictured = useUnpictured();
  const wide = useWide();
  const left =
    stops.length + skipped.length + conflicts.length + (unpictured?.length ?? 0) + (wide?.length ?? 0);
  const isLookedInto = unpictured !== undefined && wide !== undefined;
  return (
    <>
      <JobHeader back={`/jobs/${doc}`} />
      <SixColumns strip />
      <main className="page narrow">
        <h1>{text.phrase('before-leaving')}</h1>
        <p className={left === 0 ? 'empty' : 'second'} role="status">
          {text.phrase(left > 0 ? 'leaving-help' : isLookedInto ? 'may-leave' : 'leaving-looking')}
        </p>
        <LeavingPart called="conflicts" count={conflicts.length}>
          {conflicts.map((path) => (
            <ReadingRow key={path} path={path} />
          ))}
        </LeavingPart>
        <Unpictured plates={unpictured ?? []} />
        <Wide wide={wide ?? []} />
        <LeavingPart called="skipped" count={skipped.length}>
          {skipped.map((path) => (
            <ReadingRow key={path} path={path} beside={text.phrase(`skip.${skips[path]?.reason}`)} />
          ))}
        </LeavingPart>
        {stops.map((stop) => (
          <Missing key={stop.station} stop={stop} />
        ))}
      </main>
    </>
  );
}

function Unpictured({ plates }: { readonly plates: readonly string[] }) {
  const { doc } = useSession();
  const { view } = useMoment();
  const text = useText();
  return (
    <LeavingPart called="photos" count={plates.length}>
      {plates.map((path) => {
        const [collection = '', id = ''] = path.split('/');
        const name = view.record(collection, id).reading('name')?.value;
        const isOld = view.record(collection, id).reading('planned')?.value === 'no';
        const plain = isOld ? text.phrase('plate-old') : text.record(collection);
        return (
          <li key={path}>
            <Link className="reading" href={`/jobs/${doc}/plate/${collection}/${id}`}>
              {typeof name === 'string' && name !== '' ? name : plain}
            </Link>
          </li>
        );
      })}
    </LeavingPart>
  );
}

function Wide({ wide }: { readonly wide: NonNullable<ReturnType<typeof useWide>> }) {
  const text = useText();
  return (
    <LeavingPart called="wide" count={wide.length}>
      {wide.map(({ finding, readings }) => (
        <li key={`${finding.rule}@${finding.subject.id}`} className="leaving-wide">
          <p>
            {[text.rule(finding.rule).title, text.subject(finding)].filter((one) => one !== '').join(' · ')}
          </p>
          <p className="missing">
            {readings.map((path) => (
              <ReadingLink key={path} path={path} />
            ))}
          </p>
        </li>
      ))}
    </LeavingPart>
  );
}

/** The first round first; what only fills out the second is folded away. */
function Missing({ stop: { station, readings } }: { readonly stop: Stop }) {
  const text = useText();
  const [first, rest] = [readings.filter((one) => one.first), readings.filter((one) => !one.first)];
  const rows = (of: Stop['readings']) => of.map(({ path }) => <ReadingRow key={path} path={path} />);
  return (
    <section className="stop" aria-label={text.phrase(`station.${station}`)}>
      <h2>{text.phrase(`station.${station}`)}</h2>
      <ul className="stop-list">{rows(first)}</ul>
      {rest.length > 0 && (
        <details>
          <summary>{text.phrase('leaving-rest', { count: rest.length })}</summary>
          <ul className="stop-list">{rows(rest)}</ul>
        </details>
      )}
    </section>
  );
}
