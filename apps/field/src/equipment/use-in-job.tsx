/** A heater or pump of the library copied into a job: over one that is there, or as one more. */
import { Suspense, use, useState } from 'react';
import { Link } from 'wouter';
import type { JobSession } from '../session/job-session.ts';
import { freshId } from '../store/replica.ts';
import { useShop } from '../store/shop-context.ts';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { type Item, nameOf, takeEdits } from './library.ts';

export function UseInJob({ item }: { readonly item: Item }) {
  const jobs = useSignal(useShop().listed);
  const text = useText();
  const [chosen, setChosen] = useState('');
  const there = (jobs ?? []).filter((job) => job.deleted === undefined && !job.archived);
  if (there.length === 0 || Object.keys(item.readings).length === 0) return null;
  return (
    <section className="equipment">
      <h2>{text.phrase('equipment-use')}</h2>
      <label className="entry-field">
        <span>{text.phrase('equipment-job')}</span>
        <select className="text-input" value={chosen} onChange={(event) => setChosen(event.target.value)}>
          <option value="">{text.phrase('equipment-choose')}</option>
          {there.map(({ doc, name }) => (
            <option key={doc} value={doc}>
              {name || text.phrase('unnamed')}
            </option>
          ))}
        </select>
      </label>
      <Suspense>{chosen !== '' && <Records key={chosen} doc={chosen} item={item} />}</Suspense>
    </section>
  );
}

function Records({ doc, item }: { readonly doc: string; readonly item: Item }) {
  const session = use(useShop().session(doc));
  const { view } = useSignal(session.now);
  const text = useText();
  const [taken, setTaken] = useState<string>();
  const { kind } = item;
  const take = (id: string): void => {
    put(session, item, id);
    setTaken(id);
  };
  return (
    <div className="equipment-use">
      {view.all(kind).map((record) => (
        <button key={record.id} type="button" className="button" onClick={() => take(record.id)}>
          {text.phrase('equipment-over', { name: nameOf(record) || text.record(kind) })}
        </button>
      ))}
      <button type="button" className="button" onClick={() => take(freshId('e'))}>
        {text.phrase('equipment-more', { record: text.record(kind) })}
      </button>
      <p role="status">
        {taken !== undefined && (
          <Link className="button main" href={`/jobs/${doc}/plate/${kind}/${taken}`}>
            {text.phrase('equipment-used')}
          </Link>
        )}
      </p>
    </div>
  );
}

/** What was read before in the job stays in its history; one undo there takes it all back. */
function put(session: JobSession, item: Item, id: string): void {
  const { view } = session.now.get();
  const isThere = view.all(item.kind).some((one) => one.id === id);
  const edits = takeEdits(item, view.record(item.kind, id));
  session.edit(isThere ? edits : [{ type: 'add', collection: item.kind, element: id }, ...edits]);
}
