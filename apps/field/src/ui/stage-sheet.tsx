/** All five stages, what is left in each, and the ways to what belongs to the whole job. */
import { Link } from 'wouter';
import { readingOf } from '../entry/reading.ts';
import { Sheet } from '../entry/sheet.tsx';
import { skipsOf } from '../entry/skips.ts';
import { roundsOf } from '../next/rounds.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { STAGES, type Stage } from './stages.ts';
import '../entry/lists.css';
import './stage-sheet.css';

export interface StageSheetProps {
  readonly now: Stage;
  readonly onClose: () => void;
}

export default function StageSheet({ now, onClose }: StageSheetProps) {
  const session = useSession();
  const text = useText();
  const choose = (stage: Stage): void => {
    if (stage !== now)
      session.edit([
        { type: 'set', collection: 'job', field: 'stage', value: readingOf({ value: stage, how: 'told' }) },
      ]);
    onClose();
  };
  return (
    <Sheet title={text.phrase('stage')} onClose={onClose}>
      <ul className="stages">
        {STAGES.map((stage) => (
          <li key={stage}>
            <button
              type="button"
              className="stage-choice"
              aria-pressed={stage === now}
              onClick={() => choose(stage)}
            >
              <strong>{text.phrase(`stage.${stage}`)}</strong>
              <span>
                <Left stage={stage} />
              </span>
            </button>
          </li>
        ))}
      </ul>
      <nav className="stage-ways" aria-label={text.phrase('stage-ways')}>
        {WAYS.map(([name, address]) => (
          <Link key={name} className="button plain" href={address(session.doc)} onClick={onClose}>
            {text.phrase(name)}
          </Link>
        ))}
      </nav>
    </Sheet>
  );
}

const WAYS: readonly (readonly [name: string, address: (doc: string) => string])[] = [
  ['walk', (doc) => `/jobs/${doc}/walk`],
  ['before-leaving', (doc) => `/jobs/${doc}/leaving`],
  ['job-history', (doc) => `/jobs/${doc}/history`],
  ['job-files', () => '/keeping'],
];

function Left({ stage }: { readonly stage: Stage }) {
  const { doc } = useSession();
  const now = useMoment();
  const text = useText();
  const skips = useSignal(skipsOf(doc));
  if (stage === 'survey') {
    const { first, rest } = roundsOf(now, new Set(Object.keys(skips)));
    if (first.length + rest.length === 0) return text.phrase('left-survey-none');
    return text.phrase('left-survey', { first: first.length, rest: rest.length });
  }
  if (stage !== 'plan') return text.phrase('left-later');
  const findings = now.study.lines.flatMap((line) => line.findings);
  const count = (verdict: string): number => findings.filter((one) => one.verdict === verdict).length;
  return text.phrase('left-plan', { fails: count('fails'), unknown: count('unknown') });
}
