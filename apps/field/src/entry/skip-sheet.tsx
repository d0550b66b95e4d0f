/** A reading that cannot be got: why, in one tap, and nobody is asked for it again. */
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { Sheet } from './sheet.tsx';
import { SKIP_REASONS, skip } from './skips.ts';

export interface SkipSheetProps {
  readonly path: string;
  readonly onSkipped: () => void;
  readonly onClose: () => void;
}

export function SkipSheet({ path, onSkipped, onClose }: SkipSheetProps) {
  const text = useText();
  const { doc } = useSession();
  return (
    <Sheet title={text.phrase('cant-why')} onClose={onClose}>
      <p className="second">{text.phrase('cant-help')}</p>
      <div className="stack">
        {SKIP_REASONS.map((reason) => (
          <button
            key={reason}
            type="button"
            className="button"
            onClick={() => {
              skip(doc, path, reason);
              onSkipped();
            }}
          >
            {text.phrase(`skip.${reason}`)}
          </button>
        ))}
      </div>
    </Sheet>
  );
}
