/** A junction of the gas piping: one that is there by a tap, or a new one by its name. */
import { useState } from 'react';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import type { EntryForm } from './form.ts';
import { junctionsOf } from './refers.ts';
import { WalkKeys } from './walk-keys.tsx';

export function PointEntry({ before, label, onTry, onNext, onPrevious, row }: EntryForm) {
  const text = useText();
  const { view } = useMoment();
  const [typed, setTyped] = useState('');
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        onNext(typed.trim() === '' ? undefined : { value: typed.trim() });
      }}
    >
      <div className="entry-scroll stack">
        <fieldset className="entry-choices" aria-label={label}>
          {junctionsOf(view).map((name) => (
            <button
              key={name}
              type="button"
              className="pad-key entry-choice name"
              aria-pressed={before?.value === name}
              onClick={() => onNext({ value: name })}
            >
              {name === 'supply' ? text.phrase('junction-supply') : name}
            </button>
          ))}
        </fieldset>
        <label className="entry-field">
          <span>{text.phrase('junction-new')}</span>
          <input
            className="text-input"
            maxLength={40}
            autoComplete="off"
            value={typed}
            onChange={(event) => {
              setTyped(event.target.value);
              onTry(event.target.value.trim() === '' ? undefined : { value: event.target.value.trim() });
            }}
          />
        </label>
      </div>
      {row}
      <WalkKeys onPrevious={onPrevious} />
    </form>
  );
}
