/** What the work is now: a state of the job, not a place in the app. Opens the sheet of all stages. */
import { lazy, Suspense, useRef, useState } from 'react';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { isStage } from './stages.ts';

const StageSheet = lazy(() => import('./stage-sheet.tsx'));

export function StageButton() {
  const text = useText();
  const stage = useMoment().view.record('job', '-').reading('stage')?.value;
  const [isOpen, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const now = isStage(stage) ? stage : 'survey';
  return (
    <>
      <button
        ref={button}
        type="button"
        className="stage"
        aria-haspopup="dialog"
        aria-label={text.phrase('stage-now', { stage: text.phrase(`stage.${now}`) })}
        onClick={() => setOpen(true)}
      >
        {text.phrase(`stage.${now}`)}
      </button>
      {isOpen && (
        <Suspense>
          <StageSheet
            now={now}
            onClose={() => {
              setOpen(false);
              button.current?.focus();
            }}
          />
        </Suspense>
      )}
    </>
  );
}
