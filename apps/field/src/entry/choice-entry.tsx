/** A choice: one tap enters it. Yes and no are two large keys. */
import { useText } from '../text/use-text.tsx';
import type { EntryForm } from './form.ts';
import { WalkKeys } from './walk-keys.tsx';

export interface ChoiceEntryProps extends EntryForm {
  readonly choices: readonly string[];
}

export function ChoiceEntry({ choices, before, label, onTry, onNext, onPrevious, row }: ChoiceEntryProps) {
  const text = useText();
  const isYesNo = choices.length === 2 && choices.includes('yes') && choices.includes('no');
  const stray = before !== undefined && !choices.includes(String(before.value));
  return (
    <div className="entry">
      {stray && <p className="notice">{text.phrase('not-a-choice', { text: String(before.value) })}</p>}
      <fieldset className={isYesNo ? 'entry-choices yes-no' : 'entry-choices'} aria-label={label}>
        {choices.map((choice) => (
          <button
            key={choice}
            type="button"
            className="pad-key entry-choice"
            aria-pressed={before?.value === choice}
            onPointerEnter={(event) => event.pointerType === 'mouse' && onTry({ value: choice })}
            onPointerLeave={() => onTry(undefined)}
            onFocus={(event) => event.target.matches(':focus-visible') && onTry({ value: choice })}
            onClick={() => onNext({ value: choice })}
          >
            {text.choice(choice)}
          </button>
        ))}
      </fieldset>
      {row}
      <WalkKeys onPrevious={onPrevious} onNext={() => onNext(undefined)} />
    </div>
  );
}
