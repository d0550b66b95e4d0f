/** How many of each: one row a thing, − and +, and the number between them may be typed. */
import type { Reading } from '@firstfire/job';
import { useState } from 'react';
import { useText } from '../text/use-text.tsx';
import type { EntryForm } from './form.ts';
import { WalkKeys } from './walk-keys.tsx';

export interface CountsEntryProps extends EntryForm {
  readonly of: readonly string[];
}

type Counts = Readonly<Record<string, number>>;

const MOST = 1000;

export function CountsEntry({ of, before, label, onTry, onNext, onPrevious, row }: CountsEntryProps) {
  const text = useText();
  const [counts, setCounts] = useState<Counts | undefined>();
  const shown = counts ?? countsIn(before);
  const put = (name: string, count: number): void => {
    const made = { ...shown, [name]: Math.max(0, Math.min(MOST, Math.round(count) || 0)) };
    setCounts(made);
    onTry({ value: whole(made, of) });
  };
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        // Next on a list of zeros says that somebody looked and there are none.
        onNext(counts === undefined && before !== undefined ? undefined : { value: whole(shown, of) });
      }}
    >
      <ul className="entry-counts entry-scroll" aria-label={label}>
        {of.map((name) => (
          <li key={name}>
            <Stepper name={text.choice(name)} count={shown[name] ?? 0} onPut={(count) => put(name, count)} />
          </li>
        ))}
      </ul>
      {row}
      <WalkKeys onPrevious={onPrevious} />
    </form>
  );
}

interface StepperProps {
  readonly name: string;
  readonly count: number;
  readonly onPut: (count: number) => void;
}

function Stepper({ name, count, onPut }: StepperProps) {
  const text = useText();
  return (
    <>
      <span className="entry-counts-name">{name}</span>
      <button
        type="button"
        className="pad-key"
        aria-label={text.phrase('one-less', { name })}
        disabled={count === 0}
        onClick={() => onPut(count - 1)}
      >
        −
      </button>
      <input
        aria-label={name}
        inputMode="numeric"
        value={String(count)}
        onChange={(event) => onPut(Number(event.target.value.replace(/\D/g, '')))}
        onFocus={(event) => event.target.select()}
      />
      <button
        type="button"
        className="pad-key"
        aria-label={text.phrase('one-more', { name })}
        onClick={() => onPut(count + 1)}
      >
        +
      </button>
    </>
  );
}

function countsIn(before: Reading | undefined): Counts {
  const value = before?.value;
  return typeof value === 'object' && !Array.isArray(value) ? (value as Counts) : {};
}

/** Every name with its count, zeros too: a zero is an answer. */
function whole(counts: Counts, of: readonly string[]): Counts {
  return Object.fromEntries(of.map((name) => [name, counts[name] ?? 0]));
}
