/** A choice: one tap enters it. */
import type { Reading } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';

export interface ChoiceEntryProps {
  readonly choices: readonly string[];
  readonly before: Reading | undefined;
  readonly onNext: (given: Pick<Reading, 'value'> | undefined) => void;
}

export function ChoiceEntry({ choices, before, onNext }: ChoiceEntryProps) {
  const text = useText();
  return (
    <div className="choices">
      {choices.map((choice) => (
        <button
          key={choice}
          type="button"
          className="button"
          aria-pressed={before?.value === choice}
          onClick={() => onNext({ value: choice })}
        >
          {text.choice(choice)}
        </button>
      ))}
      <button type="button" className="button plain" onClick={() => onNext(undefined)}>
        {text.phrase('next')}
      </button>
    </div>
  );
}
