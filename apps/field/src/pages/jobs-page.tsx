/** The jobs on this device: one row each, the newest first. */
import { useState } from 'react';
import { Link } from 'wouter';
import type { Summary } from '../store/database.ts';
import { useShop } from '../store/shop-context.ts';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import './pages.css';

export function JobsPage() {
  const jobs = useSignal(useShop().listed);
  const text = useText();
  const [wanted, setWanted] = useState('');
  const found = jobs?.filter((job) => matches(job, wanted)) ?? [];
  return (
    <main className="page jobs">
      <header className="jobs-head">
        <h1>{text.phrase('jobs')}</h1>
        <Link className="button main" href="/new">
          {text.phrase('new-job')}
        </Link>
      </header>
      {jobs !== undefined && jobs.length > 0 && (
        <input
          type="search"
          className="text-input"
          aria-label={text.phrase('search')}
          placeholder={text.phrase('search')}
          value={wanted}
          onChange={(event) => setWanted(event.target.value)}
        />
      )}
      {jobs?.length === 0 && <p className="empty">{text.phrase('no-jobs')}</p>}
      {jobs !== undefined && jobs.length > 0 && found.length === 0 && (
        <p className="empty">{text.phrase('none-found')}</p>
      )}
      <ul className="job-list">
        {found.map((job) => (
          <li key={job.doc}>
            <JobRow job={job} />
          </li>
        ))}
      </ul>
    </main>
  );
}

function matches({ name, place }: Summary, wanted: string): boolean {
  return `${name} ${place}`.toLocaleLowerCase().includes(wanted.trim().toLocaleLowerCase());
}

function JobRow({ job }: { readonly job: Summary }) {
  const text = useText();
  const { worst } = job;
  return (
    <Link className="job-row" href={`/jobs/${job.doc}`}>
      <span className="job-name">{job.name || text.phrase('unnamed')}</span>
      <span className="second">
        {[text.phrase(`stage.${job.stage}`), job.place].filter(Boolean).join(' · ')}
      </span>
      {worst !== undefined && <span className="job-worst">{text.rule(worst.rule).title}</span>}
    </Link>
  );
}
