/** What stands above the pages of the library: one level up, where one is, and what can be taken back. */
import { UndoRefused } from '../keeping/undo-refused.tsx';
import { useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { BackLink } from '../ui/back-link.tsx';
import { UndoButtons } from '../ui/undo-buttons.tsx';

export function EquipmentHeader({ back }: { readonly back: string }) {
  const text = useText();
  const saved = useSignal(useSession().saved);
  return (
    <>
      <header className="job-header">
        <BackLink href={back} />
        <div className="job-title">
          <strong>{text.phrase('equipment-short')}</strong>
          <span className="second" role="status">
            {saved.state === 'refused'
              ? text.phrase('refused', { waiting: saved.waiting })
              : text.phrase(saved.state === 'saving' ? 'saving' : 'where.here')}
          </span>
        </div>
        <UndoButtons />
      </header>
      <UndoRefused />
    </>
  );
}
