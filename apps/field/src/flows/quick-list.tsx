/** Readings in one list, each entered in its place; what is answered stays in sight, so that it can be changed. */
import { useRef, useState } from 'react';
import { HowChoice } from '../entry/how-choice.tsx';
import { Sheet } from '../entry/sheet.tsx';
import { skipsOf } from '../entry/skips.ts';
import { stickHow, sticky } from '../entry/sticky.ts';
import { useSession } from '../session/use-job.tsx';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { QuickRow } from './quick-row.tsx';
import './flows.css';

/** `paths` are those missing now; what has been shown once keeps its place. */
export function QuickList({ paths, label }: { readonly paths: readonly string[]; readonly label: string }) {
  const { doc } = useSession();
  const skips = useSignal(skipsOf(doc));
  const shown = useRef<readonly string[]>([]);
  const added = paths.filter((path) => !shown.current.includes(path));
  if (added.length > 0) shown.current = [...shown.current, ...added];
  return (
    <>
      <HowKnown />
      <ul className="quick-list" aria-label={label}>
        {shown.current.map((path) => (
          <QuickRow key={path} path={path} skipped={skips[path]?.reason} />
        ))}
      </ul>
    </>
  );
}

function HowKnown() {
  const text = useText();
  const { how } = useSignal(sticky);
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="button plain quick-how" onClick={() => setOpen(true)}>
        {text.phrase('quick-how', { how: text.phrase(`how.${how}`) })}
      </button>
      {isOpen && (
        <Sheet title={text.phrase('how')} onClose={() => setOpen(false)}>
          <HowChoice value={how} onChange={stickHow} />
        </Sheet>
      )}
    </>
  );
}
