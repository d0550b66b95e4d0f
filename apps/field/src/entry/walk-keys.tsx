/** Back along the walk, and on: the same two keys under every way of entering. */
import { useText } from '../text/use-text.tsx';

export interface WalkKeysProps {
  readonly onPrevious: (() => void) | undefined;
  /** Without it the key submits the form it stands in. */
  readonly onNext?: () => void;
}

export function WalkKeys({ onPrevious, onNext }: WalkKeysProps) {
  const text = useText();
  return (
    <div className="pad-walk">
      <button
        type="button"
        className="pad-key pad-word"
        disabled={onPrevious === undefined}
        onClick={onPrevious}
      >
        {text.phrase('previous')}
      </button>
      <button
        type={onNext === undefined ? 'submit' : 'button'}
        className="pad-key pad-next"
        {...(onNext === undefined ? {} : { onClick: onNext })}
      >
        {text.phrase('next')}
      </button>
    </div>
  );
}
