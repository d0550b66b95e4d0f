/** Why the last undo or redo was not done. */
import { fill } from '@firstfire/words';
import { useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';

export function UndoRefused() {
  const text = useText();
  const issue = useSignal(useSession().refused);
  return (
    <div role="status">
      {issue !== undefined && (
        <p className="notice">
          {text.phrase('undo-refused', {
            said: fill(text.reader.speech.words.issues[`write.${issue.code}`] ?? issue.code, {
              where: partName(issue.where, text),
            }),
          })}
        </p>
      )}
    </div>
  );
}

/** `pipes/p4/length` by its reading, `pipes/p4` by its record. */
function partName(where: string, text: AppText): string {
  const [collection = '', , field] = where.split('/');
  return field === undefined ? text.record(collection) : text.path(where);
}
