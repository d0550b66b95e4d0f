/** What a reading was before: every value ever entered, by whom and when, read from the log. */
import type { FieldAt } from '../session/field-history.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { valueText, whoWrote } from './who-wrote.ts';
import './history.css';

export function FieldHistory({ at }: { readonly at: FieldAt }) {
  const session = useSession();
  const text = useText();
  // A repaint for every change of the job.
  useMoment();
  const [now, ...earlier] = session.written(at);
  if (now === undefined) return null;
  return (
    <details className="field-history">
      <summary>
        {text.phrase('history')} ({earlier.length})
      </summary>
      {earlier.length === 0 && <p className="second">{text.phrase('history-none')}</p>}
      <ol>
        {[now, ...earlier].map((one) => (
          <li key={one.id}>
            <strong>{valueText(one.value, text)}</strong>{' '}
            <span className="second">{whoWrote(one, session.replica, text)}</span>
          </li>
        ))}
      </ol>
    </details>
  );
}
