/** Everything written to the job, the latest first: what, by whom and when. */
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { type WrittenAt, writtenAnywhere } from '../session/field-history.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import { valueText, whoWrote } from '../ui/who-wrote.ts';
import '../flows/flows.css';

/** As many as one looks through. */
const MOST = 200;

export default function HistoryPage() {
  const session = useSession();
  const { version } = useMoment();
  const text = useText();
  const [all, setAll] = useState<readonly WrittenAt[] | undefined>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: read anew when the job has changed
  useEffect(() => {
    void session.operations().then((operations) => setAll(writtenAnywhere(operations)));
  }, [session, version]);
  return (
    <>
      <JobHeader back={`/jobs/${session.doc}`} />
      <SixColumns strip />
      <main className="page narrow">
        <h1>{text.phrase('job-history')}</h1>
        {all !== undefined && (
          <p className="second">
            {all.length === 0
              ? text.phrase('job-history-none')
              : text.phrase('job-history-latest', { count: Math.min(MOST, all.length), all: all.length })}
          </p>
        )}
        <ol className="stop-list">
          {all?.slice(0, MOST).map(({ path, ...one }) => (
            <li key={one.id}>
              <Link className="reading" href={`/jobs/${session.doc}/read/${path}`}>
                <span>
                  {text.path(path)} <span className="second">{whoWrote(one, session.replica, text)}</span>
                </span>
                <strong className="value">{valueText(one.value, text)}</strong>
              </Link>
            </li>
          ))}
        </ol>
      </main>
    </>
  );
}
