/** The questions of one station on one screen: yes, no, or cannot tell, a tap each. */
import { Link } from 'wouter';
import { SixColumns } from '../columns/six-columns.tsx';
import { skipsOf } from '../entry/skips.ts';
import { QuickList } from '../flows/quick-list.tsx';
import { answersOf, roundsOf } from '../next/rounds.ts';
import { STATIONS, type Station, stationOf } from '../next/stations.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { JobHeader } from '../ui/job-header.tsx';
import '../entry/pad.css';
import '../entry/entry.css';
import '../entry/lists.css';

export default function QuestionsPage({ station }: { readonly station: string }) {
  const { doc } = useSession();
  const now = useMoment();
  const text = useText();
  const skipped = new Set(Object.keys(useSignal(skipsOf(doc))));
  const standing = STATIONS.find((one) => one === station);
  if (standing === undefined) return <p className="page">{text.phrase('no-such-page')}</p>;
  const questions = roundsOf(now, skipped).rest.filter(({ path }) => answersOf(path) !== undefined);
  const here = questions.filter(({ path }) => stationOf(path) === station).map(({ path }) => path);
  const next = nextStation(standing, (one) => questions.some(({ path }) => stationOf(path) === one));
  return (
    <>
      <JobHeader back={`/jobs/${doc}/walk`} />
      <SixColumns strip />
      <main className="page narrow">
        <h1>{text.phrase(`station.${station}`)}</h1>
        <p className="second" role="status">
          {text.phrase(here.length === 0 ? 'questions-none' : 'questions-left', { count: here.length })}
        </p>
        <QuickList key={station} paths={here} label={text.phrase('questions')} />
        <Link
          className="button main walk-start"
          href={next === undefined ? `/jobs/${doc}/walk` : `/jobs/${doc}/questions/${next}`}
          replace
        >
          {text.phrase(next === undefined ? 'questions-done' : 'questions-next', {
            station: text.phrase(`station.${next}`),
          })}
        </Link>
      </main>
    </>
  );
}

/** Onward as one walks, and round again to what was left behind. */
function nextStation(here: Station, asks: (station: Station) => boolean): Station | undefined {
  const at = STATIONS.indexOf(here);
  return [...STATIONS.slice(at + 1), ...STATIONS.slice(0, at)].find(asks);
}
