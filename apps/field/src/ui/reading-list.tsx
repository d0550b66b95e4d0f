/** The readings of a line, record by record: value large, how it is known small, an assumed one in a dashed box. */
import { RECORD_BY_COLLECTION, type Reading } from '@firstfire/job';
import { memo } from 'react';
import { Link } from 'wouter';
import { readingText } from '../entry/reading.ts';
import { COLLECTIONS_OF } from '../next/collections.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { SecondValues } from './second-values.tsx';

export function ReadingList({ line }: { readonly line: string }) {
  return (COLLECTIONS_OF[line] ?? []).map((collection) => (
    <Collection key={collection} collection={collection} />
  ));
}

function Collection({ collection }: { readonly collection: string }) {
  const { view } = useMoment();
  const spec = RECORD_BY_COLLECTION.get(collection);
  if (spec === undefined) return null;
  const ids = spec.single ? ['-'] : view.all(collection).map((record) => record.id);
  return ids.map((id) => <RecordReadings key={id} collection={collection} id={id} />);
}

function RecordReadings({ collection, id }: { readonly collection: string; readonly id: string }) {
  const { view } = useMoment();
  const text = useText();
  const record = view.record(collection, id);
  const fields = Object.keys(RECORD_BY_COLLECTION.get(collection)?.fields ?? {});
  const name = record.reading('name')?.value;
  return (
    <details className="record" open>
      <summary>{typeof name === 'string' && name !== '' ? name : text.record(collection)}</summary>
      <ul className="reading-list">
        {fields.map((field) => (
          <li key={field}>
            <ReadingRow collection={collection} id={id} field={field} reading={record.reading(field)} />
            <SecondValues at={{ collection, id, field }} />
          </li>
        ))}
      </ul>
    </details>
  );
}

interface RowProps {
  readonly collection: string;
  readonly id: string;
  readonly field: string;
  readonly reading: Reading | undefined;
}

/** A reading that stands as it was is not written anew: there are hundreds of them. */
const ReadingRow = memo(function ReadingRow({ collection, id, field, reading }: RowProps) {
  const { doc } = useSession();
  const text = useText();
  return (
    <Link className="reading" href={`/jobs/${doc}/read/${collection}/${id}/${field}`}>
      <span>
        {text.field(collection, field)}
        {reading !== undefined && <span className="second"> {text.phrase(`how.${reading.how}`)}</span>}
      </span>
      <strong className={reading?.how === 'assumed' ? 'value assumed' : 'value'}>
        {reading === undefined ? '—' : readingText(reading, text)}
      </strong>
    </Link>
  );
});
