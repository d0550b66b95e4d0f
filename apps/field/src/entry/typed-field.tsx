/** What is typed, large; the part that was not understood underlined, where it stands. */
import { useText } from '../text/use-text.tsx';
import { withoutUnseen } from './typing.ts';

export interface TypedFieldProps {
  readonly label: string;
  readonly typed: string;
  readonly unit: string;
  /** Not understood. */
  readonly odd: { readonly from: number; readonly to: number } | undefined;
  readonly onType: (typed: string) => void;
}

export function TypedField({ label, typed, unit, odd, onType }: TypedFieldProps) {
  const text = useText();
  return (
    <div className={odd === undefined ? 'entry-typed' : 'entry-typed odd'}>
      {odd !== undefined && (
        <div className="entry-mirror" aria-hidden="true">
          {typed.slice(0, odd.from)}
          <mark>{typed.slice(odd.from, odd.to) || ' '}</mark>
          {typed.slice(odd.to)}
        </div>
      )}
      <input
        aria-label={label}
        aria-describedby="entry-read-as"
        aria-invalid={odd !== undefined}
        onScroll={({ currentTarget: field }) => {
          const mirror = field.previousElementSibling;
          if (mirror instanceof HTMLElement) mirror.style.transform = `translateX(${-field.scrollLeft}px)`;
        }}
        // The pad is the keyboard on a phone; a desk has its own.
        inputMode="none"
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        enterKeyHint="next"
        maxLength={100}
        placeholder={text.phrase('type-here')}
        value={typed}
        onChange={(event) => onType(withoutUnseen(event.target.value))}
        // biome-ignore lint/a11y/noAutofocus: the page is this one field
        autoFocus
      />
      <span className="entry-unit" aria-hidden="true">
        {unit}
      </span>
    </div>
  );
}
