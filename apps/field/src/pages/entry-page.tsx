/** One reading entered, the six columns in sight: whatever is typed shows at once what it changes. */
import { useState } from 'react';
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { ChangedLine } from '../entry/changed-line.tsx';
import { EntryForm, type Spec } from '../entry/entry-form.tsx';
import { EntryHead } from '../entry/entry-head.tsx';
import { HereButton } from '../entry/here-button.tsx';
import { HowRow } from '../entry/how-row.tsx';
import { lineOf } from '../entry/line-of.ts';
import type { Measured } from '../entry/quantity-entry.tsx';
import { roundAt } from '../entry/round.ts';
import { skipsOf, unskip } from '../entry/skips.ts';
import { stickTaking } from '../entry/sticky.ts';
import { type FieldAt, fieldOf } from '../entry/understood.ts';
import { useEntry } from '../entry/use-entry.ts';
import { usePhotos } from '../entry/use-photos.ts';
import { placeOf } from '../entry/walk.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { FieldHistory } from '../ui/history.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import { SecondValues } from '../ui/second-values.tsx';
import '../entry/pad.css';
import '../entry/entry.css';
import '../entry/lists.css';

export function EntryPage({ at }: { readonly at: FieldAt }) {
  const spec = fieldOf(at);
  if (spec === undefined || spec.type === 'substitute') return <NoSuchReading />;
  // A reading has its own state: another one begins afresh.
  return <Entering key={`${at.collection}/${at.id}/${at.field}`} at={at} spec={spec} />;
}

function NoSuchReading() {
  const { doc } = useSession();
  const text = useText();
  return (
    <>
      <JobHeader back={`/jobs/${doc}`} />
      <main className="page stack">
        <h1>{text.phrase('no-such-reading')}</h1>
        <p>
          <Link className="button" href={`/jobs/${doc}`}>
            {text.phrase('to-the-job')}
          </Link>
        </p>
      </main>
    </>
  );
}

function Entering({ at, spec }: { readonly at: FieldAt; readonly spec: Spec }) {
  const { doc } = useSession();
  const text = useText();
  const entry = useEntry(at);
  const [note, setNote] = useState(entry.before?.note ?? '');
  const [offered, setOffered] = useState<string | undefined>();
  const path = `${at.collection}/${at.id}/${at.field}`;
  const line = lineOf(entry.study, at);
  const noted = isNoted(note, entry.before) ? entry.before : undefined;
  return (
    <div className="entry-screen">
      <JobHeader back={entry.back ?? `/jobs/${doc}${line === undefined ? '' : `/${line}`}`} />
      <SixColumns strip {...(line === undefined ? {} : { open: line })} study={entry.trial} />
      <main className="entry-page">
        <Head at={at} />
        <SecondValues at={at} />
        <EntryForm
          at={at}
          spec={spec}
          doc={doc}
          before={entry.before}
          label={text.field(at.collection, at.field)}
          offered={offered}
          onTry={entry.tryOut}
          onNext={(given) => entry.next(given ?? noted, note)}
          onPrevious={entry.previous}
          row={(measured) => (
            <>
              {at.field === 'altitude' && <AltitudeHere onOffer={setOffered} />}
              <Row
                at={at}
                path={path}
                note={note}
                onNote={setNote}
                onSkipped={() => entry.next(undefined, '')}
                measured={measured}
              />
              <ChangedLine before={entry.study} after={entry.trial} />
            </>
          )}
        />
      </main>
    </div>
  );
}

/** A note alone, on a reading that stands, is worth storing too. */
function isNoted(note: string, before: ReturnType<typeof useEntry>['before']): boolean {
  return before !== undefined && note.trim() !== (before.note ?? '');
}

interface RowProps {
  readonly at: FieldAt;
  readonly path: string;
  readonly note: string;
  readonly onNote: (note: string) => void;
  readonly onSkipped: () => void;
  readonly measured: Measured | undefined;
}

function Row({ at, measured, ...row }: RowProps) {
  const photos = usePhotos(row.path);
  return (
    <HowRow
      {...row}
      photos={photos}
      history={<FieldHistory at={at} />}
      {...(measured === undefined ? {} : { measured })}
    />
  );
}

function Head({ at }: { readonly at: FieldAt }) {
  const text = useText();
  const { doc } = useSession();
  const { view, study } = useMoment();
  const path = `${at.collection}/${at.id}/${at.field}`;
  const skips = useSignal(skipsOf(doc));
  const skipped = skips[path];
  const round = roundAt(doc, path);
  const place = placeOf({ doc, view, study, skips, path });
  const name = view.record(at.collection, at.id).reading('name')?.value;
  const station = round === undefined ? text.phrase(`station.${place.station}`) : text.phrase('plate');
  const number = round === undefined ? place.number : round.paths.indexOf(path) + 1;
  const total = round === undefined ? place.total : round.paths.length;
  const walk = total === 1 ? station : text.phrase('walk-place', { number, total, station });
  return (
    <EntryHead
      at={at}
      of={typeof name === 'string' && name !== '' && at.field !== 'name' ? name : text.record(at.collection)}
      walk={walk}
      skipped={skipped === undefined ? undefined : text.phrase(`skip.${skipped.reason}`)}
      onAskAgain={() => unskip(doc, path)}
    />
  );
}

/** The device's own altitude, typed as if by hand, with its accuracy as the ±. */
function AltitudeHere({ onOffer }: { readonly onOffer: (typed: string) => void }) {
  const text = useText();
  const [isUnknown, setUnknown] = useState(false);
  if (isUnknown) return <p className="entry-odd">{text.phrase('here-no-altitude')}</p>;
  return (
    <HereButton
      onHere={({ altitude }) => {
        if (altitude === undefined) {
          setUnknown(true);
          return;
        }
        const metres = Math.round(altitude.value);
        stickTaking('length', {
          instrument: text.phrase('instrument.phone'),
          pm: `${Math.ceil(altitude.plusMinus)} m`,
        });
        onOffer(`${metres} m`);
      }}
    />
  );
}
