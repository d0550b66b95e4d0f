/** Said right after something was taken out of the library, so that it can be brought back with one tap. */
import { useMoment, useSession } from '../session/use-job.tsx';
import { Signal } from '../store/signal.ts';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';

export interface Removed {
  readonly name: string;
  /** Of the library right after: whatever is done later has an undo of its own. */
  readonly version: number;
}

export const removed = new Signal<Removed | undefined>(undefined);

export function Gone() {
  const session = useSession();
  const { version, canUndo } = useMoment();
  const text = useText();
  const gone = useSignal(removed);
  return (
    <div role="status">
      {gone !== undefined && gone.version === version && canUndo && (
        <p className="notice bring-back">
          {text.phrase('equipment-deleted', { name: gone.name })}
          <button type="button" className="button" onClick={() => session.undo()}>
            {text.phrase('undo')}
          </button>
        </p>
      )}
    </div>
  );
}
