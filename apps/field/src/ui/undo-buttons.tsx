/** One step back, and forward again. */
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

const BACK = 'M9 5 4 10l5 5M4 10h10a6 6 0 0 1 0 12';
const FORTH = 'm15 5 5 5-5 5m5-5H10a6 6 0 0 0 0 12';

export function UndoButtons() {
  const session = useSession();
  const { canUndo, canRedo } = useMoment();
  const text = useText();
  return (
    <>
      <button type="button" className="icon-button" disabled={!canUndo} onClick={() => session.undo()}>
        <Arrow path={BACK} />
        <span className="sr">{text.phrase('undo')}</span>
      </button>
      {canRedo && (
        <button type="button" className="icon-button" onClick={() => session.redo()}>
          <Arrow path={FORTH} />
          <span className="sr">{text.phrase('redo')}</span>
        </button>
      )}
    </>
  );
}

function Arrow({ path }: { readonly path: string }) {
  return (
    <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
      <path d={path} fill="none" stroke="currentColor" strokeWidth="2.5" />
    </svg>
  );
}
