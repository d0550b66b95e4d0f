/** A name, a size by its name, a note: taken as typed. */
import type { Reading } from '@firstfire/job';
import { useState } from 'react';
import { useText } from '../text/use-text.tsx';

export interface TextEntryProps {
  readonly before: Reading | undefined;
  readonly label: string;
  readonly onNext: (given: Pick<Reading, 'value'> | undefined) => void;
}

export function TextEntry({ before, label, onNext }: TextEntryProps) {
  const text = useText();
  const [typed, setTyped] = useState(typeof before?.value === 'string' ? before.value : '');
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        onNext(typed.trim() === '' ? undefined : { value: typed.trim() });
      }}
    >
      <input
        className="typed"
        aria-label={label}
        autoComplete="off"
        maxLength={200}
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
        // biome-ignore lint/a11y/noAutofocus: the page is this one field
        autoFocus
      />
      <button type="submit" className="button main">
        {text.phrase('next')}
      </button>
    </form>
  );
}
