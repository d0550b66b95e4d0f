/** One line of the job: picture first, then what is wrong with it, then the readings behind it. */
import { Suspense } from 'react';
import { SixColumns } from '../columns/six-columns.tsx';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { FindingRow } from '../ui/finding-row.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import { NextBar } from '../ui/next-bar.tsx';
import { ReadingList } from '../ui/reading-list.tsx';
import { PICTURES } from './pictures.tsx';

export function LinePage({ line }: { readonly line: string }) {
  const { study } = useMoment();
  const { doc } = useSession();
  const text = useText();
  const Picture = PICTURES.get(line);
  const found = study.lines.find((one) => one.line === line);
  return (
    <>
      <JobHeader back={`/jobs/${doc}`} />
      <SixColumns open={line} />
      <main className="page line-page">
        <section className="picture">
          <h1>{text.line(line)}</h1>
          {Picture !== undefined && (
            <Suspense>
              <Picture />
            </Suspense>
          )}
        </section>
        <div>
          <section aria-label={text.phrase('findings')}>
            <ul className="finding-list">
              {found?.findings
                .filter((one) => one.verdict !== 'does not apply')
                .map((finding) => (
                  <FindingRow key={`${finding.rule}@${finding.subject.id}`} finding={finding} />
                ))}
            </ul>
          </section>
          <section>
            <h2>{text.phrase('readings')}</h2>
            <ReadingList line={line} />
          </section>
        </div>
      </main>
      <NextBar />
    </>
  );
}
