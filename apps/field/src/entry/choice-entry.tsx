/** A choice: one tap enters it. Yes and no are two large keys. */
import { useText } from '../text/use-text.tsx';
import { ChoicePicture } from './choice-picture.tsx';
import { drawingOf } from './choice-pictures.ts';
import type { EntryForm } from './form.ts';
import type { FieldAt } from './understood.ts';
import { WalkKeys } from './walk-keys.tsx';

export interface ChoiceEntryProps extends EntryForm {
  readonly choices: readonly string[];
}

export function ChoiceEntry({
  at,
  choices,
  before,
  label,
  onTry,
  onNext,
  onPrevious,
  row,
}: ChoiceEntryProps) {
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
            <Picture at={at} choice={choice} />
            <span>{text.choice(choice)}</span>
          </button>
        ))}
      </fieldset>
      {row}
      <WalkKeys onPrevious={onPrevious} onNext={() => onNext(undefined)} />
    </div>
  );
}

function Picture({ at, choice }: { readonly at: FieldAt; readonly choice: string }) {
  const drawing = drawingOf(at.collection, at.field, choice);
  return drawing === undefined ? null : <ChoicePicture drawing={drawing} />;
}
