/** A new version is offered, never forced in the middle of work. */
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { takeUpdate, updateReady } from './service-worker.ts';

export function UpdateBar() {
  const text = useText();
  if (!useSignal(updateReady)) return null;
  return (
    <aside className="update-bar" aria-label={text.phrase('update')}>
      <span>{text.phrase('update-ready')}</span>
      <button type="button" className="button" onClick={takeUpdate}>
        {text.phrase('update-take')}
      </button>
    </aside>
  );
}
