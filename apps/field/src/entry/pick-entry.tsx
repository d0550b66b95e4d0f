/** One thing of the job picked by its name, or several. */
import { useState } from 'react';
import { useText } from '../text/use-text.tsx';
import type { EntryForm } from './form.ts';
import type { Pick } from './refers.ts';
import { WalkKeys } from './walk-keys.tsx';

export interface PickEntryProps extends EntryForm {
  readonly picks: readonly Pick[];
}

export function PickEntry({ picks, before, label, onNext, onPrevious, row }: PickEntryProps) {
  const text = useText();
  return (
    <div className="entry">
      {picks.length === 0 && <p className="empty">{text.phrase('nothing-to-pick')}</p>}
      <fieldset className="entry-choices" aria-label={label}>
        {picks.map(({ value, name }) => (
          <button
            key={value}
            type="button"
            className="pad-key entry-choice name"
            aria-pressed={before?.value === value}
            onClick={() => onNext({ value })}
          >
            {name}
          </button>
        ))}
      </fieldset>
      {row}
      <WalkKeys onPrevious={onPrevious} onNext={() => onNext(undefined)} />
    </div>
  );
}

export function PickManyEntry({ picks, before, label, onTry, onNext, onPrevious, row }: PickEntryProps) {
  const given = typeof before?.value === 'string' ? before.value.split(/\s+/) : [];
  const [chosen, setChosen] = useState<readonly string[] | undefined>();
  const now = chosen ?? given;
  const toggle = (value: string): void => {
    const made = now.includes(value) ? now.filter((one) => one !== value) : [...now, value];
    setChosen(made);
    onTry(made.length === 0 ? undefined : { value: made.join(' ') });
  };
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        onNext(chosen === undefined || chosen.length === 0 ? undefined : { value: chosen.join(' ') });
      }}
    >
      <fieldset className="entry-choices" aria-label={label}>
        {picks.map(({ value, name }) => (
          <button
            key={value}
            type="button"
            className="pad-key entry-choice name"
            aria-pressed={now.includes(value)}
            onClick={() => toggle(value)}
          >
            {name}
          </button>
        ))}
      </fieldset>
      {row}
      <WalkKeys onPrevious={onPrevious} />
    </form>
  );
}
