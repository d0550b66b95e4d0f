/** A question answered beside its name in one tap, or passed over because it cannot be told. */
import { useState } from 'react';
import { Sheet } from '../entry/sheet.tsx';
import { SkipSheet } from '../entry/skip-sheet.tsx';
import { sticky } from '../entry/sticky.ts';
import { fieldAt, writeReading } from '../entry/write.ts';
import { answersOf } from '../next/rounds.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { FigureField } from './figure-field.tsx';

export interface QuickRowProps {
  readonly path: string;
  readonly skipped: string | undefined;
}

export function QuickRow({ path, skipped }: QuickRowProps) {
  const text = useText();
  const { collection, field } = fieldAt(path);
  const [open, setOpen] = useState<'help' | 'skip' | undefined>();
  const label = text.field(collection, field);
  const help = text.help(collection, field);
  const close = (): void => setOpen(undefined);
  return (
    <li className="quick-row" id={path}>
      <div className="quick-name">
        <span>
          {label} <span className="second">{text.record(collection)}</span>
        </span>
        {help !== undefined && (
          <button type="button" className="quick-help" onClick={() => setOpen('help')}>
            <span aria-hidden="true">?</span>
            <span className="sr">{text.phrase('where-found-of', { reading: label })}</span>
          </button>
        )}
      </div>
      <fieldset className="quick-answers" aria-label={label}>
        {answersOf(path) === undefined ? <FigureField path={path} label={label} /> : <Answers path={path} />}
        <button
          type="button"
          className="quick-key cant"
          aria-pressed={skipped !== undefined}
          onClick={() => setOpen('skip')}
        >
          {text.phrase(skipped === undefined ? 'quick-cant' : `skip.${skipped}`)}
        </button>
      </fieldset>
      {open === 'help' && (
        <Sheet title={label} onClose={close}>
          <p>{help}</p>
        </Sheet>
      )}
      {open === 'skip' && <SkipSheet path={path} onSkipped={close} onClose={close} />}
    </li>
  );
}

function Answers({ path }: { readonly path: string }) {
  const session = useSession();
  const { view } = useMoment();
  const text = useText();
  const at = fieldAt(path);
  const value = view.record(at.collection, at.id).reading(at.field)?.value;
  return answersOf(path)?.map((answer) => (
    <button
      key={answer}
      type="button"
      className="quick-key"
      aria-pressed={value === answer}
      onClick={() => writeReading(session, at, { value: answer, how: sticky.get().how })}
    >
      {text.choice(answer)}
    </button>
  ));
}
