/** One line of the job: picture first, then what is wrong with it, then the readings behind it. */
import { findingId } from '@firstfire/reference';
import { memo, Suspense } from 'react';
import { SixColumns } from '../columns/six-columns.tsx';
import { Later, useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { FindingList } from '../ui/finding-list.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import { NextBar } from '../ui/next-bar.tsx';
import { PlateLinks } from '../ui/plate-links.tsx';
import { ReadingList } from '../ui/reading-list.tsx';
import { Ladder } from '../working/ladder.tsx';
import { PICTURES } from './pictures.tsx';
import './line-page.css';

export interface LinePageProps {
  /** That of the finding, where one is worked out. */
  readonly line?: string;
  /** Id of the finding whose working is open. */
  readonly working?: string;
  /** All findings on one scale, above the page. */
  readonly ladder?: boolean;
}

export function LinePage({ line: asked, working, ladder = false }: LinePageProps) {
  const { study } = useMoment();
  const { doc } = useSession();
  const text = useText();
  const worked = study.lines.flatMap((one) => one.findings).find((one) => findingId(one) === working);
  const line = worked?.line ?? asked;
  if (line === undefined) return <p className="page">{text.phrase('working.gone')}</p>;
  return (
    <>
      <JobHeader back={`/jobs/${doc}`} />
      <SixColumns open={line} ladder={ladder} />
      {ladder && <Ladder line={line} />}
      <main className="page line-page">
        <LinePicture line={line} />
        <Later>
          <Lists line={line} working={working} />
        </Later>
      </main>
      <Later>
        <Next />
      </Later>
    </>
  );
}

const LinePicture = memo(function LinePicture({ line }: { readonly line: string }) {
  const text = useText();
  const Picture = PICTURES.get(line);
  return (
    <section className="picture" aria-labelledby="line">
      <h1 id="line">{text.line(line)}</h1>
      {Picture !== undefined && (
        <Suspense>
          <Picture />
        </Suspense>
      )}
    </section>
  );
});

interface ListsProps {
  readonly line: string;
  readonly working: string | undefined;
}

const Lists = memo(function Lists({ line, working }: ListsProps) {
  const { study } = useMoment();
  const text = useText();
  const found = study.lines.find((one) => one.line === line);
  return (
    <div>
      <section aria-labelledby="findings">
        <h2 id="findings" className="sr">
          {text.phrase('findings')}
        </h2>
        <FindingList key={line} line={line} findings={found?.findings ?? []} working={working} />
      </section>
      <section className="line-readings" aria-labelledby="readings">
        <h2 id="readings">{text.phrase('readings')}</h2>
        <PlateLinks line={line} />
        <ReadingList key={line} line={line} />
      </section>
    </div>
  );
});

const Next = memo(NextBar);
