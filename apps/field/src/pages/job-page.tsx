/** A job at a glance: the six columns, how its findings stand, and what is to mend, line by line, the worst first. */
import { type Finding, findingId } from '@firstfire/reference';
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { skipsOf } from '../entry/skips.ts';
import { roundsOf } from '../next/rounds.ts';
import { walkOf } from '../next/walk.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { FindingRow } from '../ui/finding-row.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import { NextBar } from '../ui/next-bar.tsx';
import { PlateLinks } from '../ui/plate-links.tsx';
import './line-page.css';

/** As the list of a line has them; what does not apply is not counted. */
const COUNTED = ['fails', 'unknown', 'tight', 'meets'] as const;

export function JobPage() {
  const { doc } = useSession();
  const { study } = useMoment();
  const text = useText();
  const open = study.lines
    .map(({ line, findings }) => ({ line, findings: findings.filter(isOpen) }))
    .filter(({ findings }) => findings.length > 0);
  return (
    <>
      <JobHeader back="/" />
      <SixColumns />
      <main className="page job-page">
        <header className="page-head">
          <h1>{text.phrase('to-mend')}</h1>
          <Link className="button" href={`/jobs/${doc}/walk`}>
            {text.phrase('walk')}
          </Link>
        </header>
        <Counts findings={study.lines.flatMap(({ findings }) => findings)} />
        {open.length === 0 && <p className="empty">{text.phrase('nothing-to-mend')}</p>}
        <ToWalk />
        {open.map(({ line, findings }) => (
          <section key={line} className="job-line-part" aria-labelledby={`mend-${line}`}>
            <h2 id={`mend-${line}`}>
              <Link href={`/jobs/${doc}/${line}`}>{text.line(line)}</Link>
            </h2>
            <ul className="finding-list">
              {findings.map((finding) => (
                <FindingRow key={findingId(finding)} finding={finding} />
              ))}
            </ul>
          </section>
        ))}
        <section aria-labelledby="plates">
          <h2 id="plates">{text.phrase('plates-all')}</h2>
          <PlateLinks />
        </section>
        <p className="second safety">{text.phrase('safety')}</p>
      </main>
      <NextBar />
    </>
  );
}

function isOpen({ verdict }: Finding): boolean {
  return verdict === 'fails' || verdict === 'tight';
}

/** What the survey still asks for, and for how long; what to see to before leaving. */
function ToWalk() {
  const { doc } = useSession();
  const now = useMoment();
  const text = useText();
  const skips = useSignal(skipsOf(doc));
  const { first, rest } = roundsOf(now, new Set(Object.keys(skips)));
  if (first.length + rest.length === 0) return null;
  const minutes = walkOf(first).reduce((sum, stop) => sum + stop.minutes, 0);
  return (
    <p className="second job-counts">
      {first.length === 0
        ? text.phrase('walk-first-done', { rest: rest.length })
        : text.phrase('walk-left', { count: first.length, minutes, rest: rest.length })}{' '}
      <Link className="job-leaving" href={`/jobs/${doc}/leaving`}>
        {text.phrase('before-leaving')}
      </Link>
    </p>
  );
}

function Counts({ findings }: { readonly findings: readonly Finding[] }) {
  const text = useText();
  return (
    <p className="second job-counts">
      {COUNTED.map((verdict) => ({
        verdict,
        count: findings.filter((one) => one.verdict === verdict).length,
      }))
        .filter(({ count }) => count > 0)
        .map(({ verdict, count }) => `${text.verdict(verdict)} ${count}`)
        .join(' · ')}
    </p>
  );
}
