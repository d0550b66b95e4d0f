/** What is asked: its name, what it is of, how far along the walk; where to find it is one tap away. */
import { useState } from 'react';
import { useText } from '../text/use-text.tsx';
import { Sheet } from './sheet.tsx';
import type { FieldAt } from './understood.ts';

export interface EntryHeadProps {
  readonly at: FieldAt;
  /** What people call the record. */
  readonly of: string;
  /** How far along the walk, and where one stands. */
  readonly walk: string;
  readonly skipped: string | undefined;
  readonly onAskAgain: () => void;
}

export function EntryHead({ at, of, walk, skipped, onAskAgain }: EntryHeadProps) {
  const text = useText();
  const [isOpen, setOpen] = useState(false);
  const label = text.field(at.collection, at.field);
  const help = text.help(at.collection, at.field);
  return (
    <div className="entry-head">
      <div>
        <h1>{label}</h1>
        <p className="second">
          {of} · {walk}
          {skipped !== undefined && (
            <>
              {' · '}
              {skipped}{' '}
              <button type="button" className="entry-offer" onClick={onAskAgain}>
                {text.phrase('ask-again')}
              </button>
            </>
          )}
        </p>
      </div>
      {help !== undefined && (
        <button type="button" className="entry-help" onClick={() => setOpen(true)}>
          <span aria-hidden="true">?</span>
          <span className="sr">{text.phrase('where-found')}</span>
        </button>
      )}
      {isOpen && help !== undefined && (
        <Sheet title={label} onClose={() => setOpen(false)}>
          <p>{help}</p>
        </Sheet>
      )}
    </div>
  );
}
