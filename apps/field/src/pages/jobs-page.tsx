/** The jobs on this device: one row each, the newest first. */
import { useState } from 'react';
import { Link } from 'wouter';
import { JobRow } from '../jobs/job-row.tsx';
import { Notices } from '../keeping/notices.tsx';
import type { Summary } from '../store/database.ts';
import { useShop } from '../store/shop-context.ts';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import './pages.css';
import '../jobs/jobs.css';

export function JobsPage() {
  const jobs = useSignal(useShop().listed);
  const text = useText();
  const [wanted, setWanted] = useState('');
  const [gone, setGone] = useState<string>();
  const there = jobs?.filter((job) => job.deleted === undefined) ?? [];
  const found = there.filter((job) => matches(job, wanted));
  const atWork = found.filter((job) => !job.archived);
  const putAway = found.filter((job) => job.archived);
  return (
    <main className="page jobs">
      <header className="jobs-head">
        <h1>{text.phrase('jobs')}</h1>
        <Link className="button main" href="/new">
          {text.phrase('new-job')}
        </Link>
      </header>
      <nav className="jobs-links">
        <Link href="/equipment">{text.phrase('equipment-short')}</Link>
        <Link href="/keeping">{text.phrase('keeping')}</Link>
        <Link href="/settings">{text.phrase('settings')}</Link>
      </nav>
      {there.length > 0 && (
        <input
          type="search"
          className="text-input"
          aria-label={text.phrase('search')}
          placeholder={text.phrase('search')}
          value={wanted}
          onChange={(event) => setWanted(event.target.value)}
        />
      )}
      <Notices />
      {gone !== undefined && <BringBack doc={gone} onDone={() => setGone(undefined)} />}
      {jobs !== undefined && there.length === 0 && <p className="empty">{text.phrase('no-jobs')}</p>}
      {there.length > 0 && found.length === 0 && <p className="empty">{text.phrase('none-found')}</p>}
      <Rows jobs={atWork} onGone={setGone} />
      {putAway.length > 0 && (
        <details className="put-away">
          <summary>{text.phrase('put-away', { count: putAway.length })}</summary>
          <Rows jobs={putAway} onGone={setGone} />
        </details>
      )}
    </main>
  );
}

function matches({ name, place }: Summary, wanted: string): boolean {
  return `${name} ${place}`.toLocaleLowerCase().includes(wanted.trim().toLocaleLowerCase());
}

interface RowsProps {
  readonly jobs: readonly Summary[];
  readonly onGone: (doc: string) => void;
}

function Rows({ jobs, onGone }: RowsProps) {
  return (
    <ul className="job-list">
      {jobs.map((job) => (
        <JobRow key={job.doc} job={job} onGone={onGone} />
      ))}
    </ul>
  );
}

/** Said right after a deletion, so that it can be taken back. */
function BringBack({ doc, onDone }: { readonly doc: string; readonly onDone: () => void }) {
  const shop = useShop();
  const text = useText();
  const name = useSignal(shop.listed)?.find((job) => job.doc === doc)?.name ?? '';
  return (
    <p className="notice bring-back" role="status">
      {text.phrase('deleted', { name })}
      <button
        type="button"
        className="button"
        onClick={() => {
          void shop.bringBack(doc).then(onDone);
        }}
      >
        {text.phrase('undo')}
      </button>
    </p>
  );
}
