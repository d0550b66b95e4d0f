/** A job at a glance: the six columns, and the worst of each line. */
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { FindingRow } from '../ui/finding-row.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import { NextBar } from '../ui/next-bar.tsx';

export function JobPage() {
  const { doc } = useSession();
  const { study } = useMoment();
  const text = useText();
  const open = study.lines
    .flatMap((line) => line.findings)
    .filter((one) => one.verdict === 'fails' || one.verdict === 'tight');
  return (
    <>
      <JobHeader back="/" />
      <SixColumns />
      <main className="page">
        <header className="page-head">
          <h1>{text.phrase('to-mend')}</h1>
          <Link className="button" href={`/jobs/${doc}/walk`}>
            {text.phrase('walk')}
          </Link>
        </header>
        {open.length === 0 && <p className="empty">{text.phrase('nothing-to-mend')}</p>}
        <ul className="finding-list">
          {open.map((finding) => (
            <FindingRow key={`${finding.rule}@${finding.subject.id}`} finding={finding} />
          ))}
        </ul>
        <p className="second safety">{text.phrase('safety')}</p>
      </main>
      <NextBar />
    </>
  );
}
