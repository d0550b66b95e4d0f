/** One reading entered, the six columns in sight: whatever is typed shows at once what it changes. */
import type { Edit, HowKnown, Reading } from '@firstfire/job';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { ChoiceEntry } from '../entry/choice-entry.tsx';
import { HowChoice } from '../entry/how-choice.tsx';
import { QuantityEntry } from '../entry/quantity-entry.tsx';
import { readingOf, readingText } from '../entry/reading.ts';
import { TextEntry } from '../entry/text-entry.tsx';
import { type FieldAt, fieldOf } from '../entry/understood.ts';
import { measureNext } from '../next/measure-next.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { JobHeader } from '../ui/job-header.tsx';

type Given = Pick<Reading, 'value' | 'unit' | 'typed'>;

export function EntryPage({ at }: { readonly at: FieldAt }) {
  const session = useSession();
  const { view } = useMoment();
  const text = useText();
  const [, go] = useLocation();
  const [how, setHow] = useState<HowKnown>('measured');
  const { collection, id, field } = at;
  const spec = fieldOf(at);
  const before = view.record(collection, id).reading(field);
  const label = text.field(collection, field);
  const next = (given: Given | undefined): void => {
    if (given !== undefined) session.edit(editsFor(at, { ...given, how }, exists(session, at)));
    const [after] = measureNext(session.now.get().study);
    if (after === undefined) history.back();
    else go(`/jobs/${session.doc}/read/${after.path}`, { replace: true });
  };
  if (spec === undefined) return <p className="page">{text.phrase('no-such-reading')}</p>;
  return (
    <>
      <JobHeader back={`/jobs/${session.doc}`} />
      <SixColumns strip />
      <main className="page narrow entry-page" key={`${collection}/${id}/${field}`}>
        <h1>{label}</h1>
        <p className="second">
          {text.record(collection)}
          {before !== undefined && ` · ${readingText(before, text)}`}
        </p>
        <HowChoice value={how} onChange={setHow} />
        {spec.type === 'quantity' ? (
          <QuantityEntry
            kind={spec.kind}
            medium={collection.startsWith('gas') || field.startsWith('inlet') ? 'gas' : 'water'}
            before={before}
            label={label}
            onNext={next}
          />
        ) : spec.type === 'choice' ? (
          <ChoiceEntry choices={spec.choices} before={before} onNext={next} />
        ) : (
          <TextEntry before={before} label={label} onNext={next} />
        )}
      </main>
    </>
  );
}

function exists(session: ReturnType<typeof useSession>, { collection, id }: FieldAt): boolean {
  return (
    id === '-' ||
    session.now
      .get()
      .view.all(collection)
      .some((one) => one.id === id)
  );
}

function editsFor(
  { collection, id, field }: FieldAt,
  given: Given & { how: HowKnown },
  there: boolean,
): Edit[] {
  const set: Edit = {
    type: 'set',
    collection,
    ...(id === '-' ? {} : { element: id }),
    field,
    value: readingOf(given),
  };
  return there ? [set] : [{ type: 'add', collection, element: id }, set];
}
