/** The job's name, where it is kept, and what can be taken back. */
import { UndoRefused } from '../keeping/undo-refused.tsx';
import { WhereKept } from '../keeping/where-kept.tsx';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { BackLink } from './back-link.tsx';
import { StageButton } from './stage-button.tsx';
import { UndoButtons } from './undo-buttons.tsx';

export function JobHeader({ back }: { readonly back: string }) {
  const { view } = useMoment();
  const text = useText();
  const given = view.record('job', '-').reading('name')?.value;
  const name = typeof given === 'string' ? given : text.phrase('unnamed');
  return (
    <>
      <header className="job-header">
        <BackLink href={back} />
        <div className="job-title">
          <strong title={name}>{name}</strong>
          <WhereKept />
        </div>
        <UndoButtons />
        <StageButton />
      </header>
      <UndoRefused />
    </>
  );
}
