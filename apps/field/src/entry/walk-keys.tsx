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
    <div className="walk-keys">
      <button type="button" className="key word-key" disabled={onPrevious === undefined} onClick={onPrevious}>
        {text.phrase('previous')}
      </button>
      <button
        type={onNext === undefined ? 'submit' : 'button'}
        className="key next-key"
        {...(onNext === undefined ? {} : { onClick: onNext })}
      >
        {text.phrase('next')}
      </button>
    </div>
  );
}
