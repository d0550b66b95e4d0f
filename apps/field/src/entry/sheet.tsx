/** A sheet over the page: what belongs to the entry and is not needed for each. Escape and a tap outside close it. */
import { type ReactNode, useEffect, useRef } from 'react';
import { useText } from '../text/use-text.tsx';

export interface SheetProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function Sheet({ title, onClose, children }: SheetProps) {
  const text = useText();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const shown = dialog.current;
    if (shown !== null && !shown.open) shown.showModal();
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape closes a dialog by itself
    <dialog
      ref={dialog}
      className="entry-sheet"
      aria-label={title}
      onClose={onClose}
      onClick={(event) => {
        if (event.target === dialog.current) dialog.current.close();
      }}
    >
      <div className="entry-sheet-body">
        <h2>{title}</h2>
        {children}
        <button type="button" className="button main" onClick={() => dialog.current?.close()}>
          {text.phrase('done')}
        </button>
      </div>
    </dialog>
  );
}
