/** The job's name, where it is kept, and what can be taken back. */
import { UndoRefused } from '../keeping/undo-refused.tsx';
import { WhereKept } from '../keeping/where-kept.tsx';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { BackLink } from './back-link.tsx';
import { StageButton } from './stage-button.tsx';

export function JobHeader({ back }: { readonly back: string }) {
  const session = useSession();
  const { view, canUndo, canRedo } = useMoment();
  const text = useText();
  const name = view.record('job', '-').reading('name')?.value;
  return (
    <>
      <header className="job-header">
        <BackLink href={back} />
        <div className="job-title">
          <strong>{typeof name === 'string' ? name : text.phrase('unnamed')}</strong>
          <WhereKept />
        </div>
        <button type="button" className="icon-button" disabled={!canUndo} onClick={() => session.undo()}>
          <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
            <path
              d="M9 5 4 10l5 5M4 10h10a6 6 0 0 1 0 12"
              fill="none"
              stroke="currentColor"
              strokeWidth="2.5"
            />
          </svg>
          <span className="sr">{text.phrase('undo')}</span>
        </button>
        {canRedo && (
          <button type="button" className="icon-button" onClick={() => session.redo()}>
            <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
              <path
                d="m15 5 5 5-5 5m5-5H10a6 6 0 0 0 0 12"
                fill="none"
                stroke="currentColor"
                strokeWidth="2.5"
              />
            </svg>
            <span className="sr">{text.phrase('redo')}</span>
          </button>
        )}
        <StageButton />
      </header>
      <UndoRefused />
    </>
  );
}
