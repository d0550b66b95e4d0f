/** How this reading is known, a photo of it, or why it cannot be got: one row, nothing of it asked each time. */
import type { quantity } from '@firstfire/engine';
import { type ReactNode, useState } from 'react';
import { useSignal } from '../store/use-signal.ts';
import { useText } from '../text/use-text.tsx';
import { HowSheet } from './how-sheet.tsx';
import { PhotoButton, type PhotosAt } from './photo-button.tsx';
import { SkipSheet } from './skip-sheet.tsx';
import { sticky } from './sticky.ts';

export interface HowRowProps {
  readonly path: string;
  readonly photos: PhotosAt;
  /** Absent where the field is no quantity. */
  readonly measured?: {
    readonly kind: quantity.Kind;
    readonly unit: string;
    readonly usual: string;
    /** The ± of what is typed. */
    readonly spread: string;
  };
  /** What stood there before. */
  readonly history: ReactNode;
  readonly note: string;
  readonly onNote: (note: string) => void;
  readonly onSkipped: () => void;
}

export function HowRow({ path, photos, measured, history, note, onNote, onSkipped }: HowRowProps) {
  const text = useText();
  const { how, taking } = useSignal(sticky);
  const [open, setOpen] = useState<'how' | 'skip' | undefined>();
  const instrument = measured === undefined ? undefined : taking[measured.kind]?.instrument;
  const close = (): void => setOpen(undefined);
  return (
    <div className="entry-how">
      <button type="button" className="entry-how-button" onClick={() => setOpen('how')}>
        <strong>
          {text.phrase(`how.${how}`)}
          {instrument !== undefined && instrument !== '' && how === 'measured' && `, ${instrument}`}
        </strong>
        <span>
          {measured?.spread}
          {note !== '' && ` · ${text.phrase('with-note')}`}
        </span>
      </button>
      <PhotoButton photos={photos} />
      <button type="button" className="entry-how-button cant" onClick={() => setOpen('skip')}>
        {text.phrase('cant')}
      </button>
      {open === 'how' && (
        <HowSheet
          {...(measured === undefined ? {} : { measured })}
          history={history}
          note={note}
          onNote={onNote}
          onClose={close}
        />
      )}
      {open === 'skip' && <SkipSheet path={path} onSkipped={onSkipped} onClose={close} />}
    </div>
  );
}
