/** A job at a glance: the six columns, how its findings stand, and what is to mend, line by line, the worst first. */
import { type Finding, findingId } from '@firstfire/reference';
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { skipsOf } from '../entry/skips.ts';
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

/** What the survey still asks for, and for how long. */
function ToWalk() {
  const { doc } = useSession();
  const { study } = useMoment();
  const text = useText();
  const skips = useSignal(skipsOf(doc));
  const stops = walkOf(study, new Set(Object.keys(skips)));
  if (stops.length === 0) return null;
  return (
    <p className="second job-counts">
      {text.phrase('walk-left', {
        count: stops.reduce((sum, stop) => sum + stop.readings.length, 0),
        minutes: stops.reduce((sum, stop) => sum + stop.minutes, 0),
      })}
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
