/** A quantity entered: what is typed, what it is read as, how it is known. */
import { quantity } from '@firstfire/engine';
import type { Reading } from '@firstfire/job';
import { issueSentence } from '@firstfire/words';
import { useState } from 'react';
import { useText } from '../text/use-text.tsx';
import { KeyPad } from './key-pad.tsx';
import { keysOf } from './keys.ts';
import { readingText } from './reading.ts';
import { understand } from './understood.ts';

export interface QuantityEntryProps {
  readonly kind: quantity.Kind;
  readonly medium: 'gas' | 'water';
  readonly before: Reading | undefined;
  readonly label: string;
  /** Stores what was read, if anything, and goes on. */
  readonly onNext: (reading: Pick<Reading, 'value' | 'unit' | 'typed'> | undefined) => void;
}

export function QuantityEntry({ kind, medium, before, label, onNext }: QuantityEntryProps) {
  const text = useText();
  const [typed, setTyped] = useState('');
  const unit = before?.unit ?? quantity.preferredUnit(kind, text.reader.system, medium);
  const found = understand(typed, kind, unit);
  const next = (): void => {
    if (found.state !== 'odd') onNext(found.state === 'read' ? found.reading : undefined);
  };
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        next();
      }}
    >
      <input
        className={found.state === 'odd' ? 'typed odd' : 'typed'}
        aria-label={label}
        aria-describedby="read-as"
        aria-invalid={found.state === 'odd'}
        inputMode="none"
        autoComplete="off"
        value={typed}
        placeholder={text.unit(unit)}
        onChange={(event) => setTyped(event.target.value)}
        // biome-ignore lint/a11y/noAutofocus: the page is this one field
        autoFocus
      />
      <p id="read-as" className="read-as" role="status">
        <span>
          {found.state === 'read' &&
            text.phrase('read-as', {
              text: text.quantity(found.si ?? 0, { unit: found.reading.unit ?? unit, kind, digits: 6 }),
            })}
          {found.state === 'odd' &&
            found.issues
              .map((issue) =>
                issueSentence(issue, {
                  words: text.reader.speech.words,
                  show: (value, of) => (of === undefined ? String(value) : text.show(value, of, medium)),
                }),
              )
              .join(' ')}
        </span>
        {before !== undefined && <span>{text.phrase('was', { text: readingText(before, text) })}</span>}
      </p>
      <KeyPad keys={keysOf(kind, unit)} typed={typed} onType={setTyped} onNext={next} />
    </form>
  );
}
