/** The pad: units and fractions as keys, digits large enough for gloves. It only types; the field says what was read. */
import type { ReactNode } from 'react';
import { useText } from '../text/use-text.tsx';
import type { Keys } from './keys.ts';
import type { SignWords } from './signs.ts';
import {
  fractionOf,
  hasUnit,
  isBelow,
  withDigit,
  withFraction,
  withoutLast,
  withSign,
  withUnit,
} from './typing.ts';

export interface UnitKey {
  /** As it stands in the typed text. */
  readonly text: string;
  /** As the reader writes it. */
  readonly caption: string;
}

export interface KeyPadProps {
  readonly units: readonly UnitKey[];
  /** What a number without a unit at the end will be read in. */
  readonly implied: string | undefined;
  readonly fractions: Keys['fractions'];
  /** Two keys in place of a minus sign, only where the value may be below zero. */
  readonly signs: SignWords | undefined;
  /** The decimal key of the reader's number format. */
  readonly mark: string;
  readonly typed: string;
  readonly onType: (typed: string) => void;
  readonly onPrevious: (() => void) | undefined;
}

export function KeyPad(props: KeyPadProps) {
  const { units, implied, fractions, signs, typed, onType } = props;
  const text = useText();
  const standing = fractionOf(typed);
  return (
    // The field keeps the focus, so that a keyboard and the pad can be used in turn.
    <fieldset className="pad" aria-label={text.phrase('keypad')} onPointerDown={keepFocus}>
      <div className="pad-units">
        {signs !== undefined &&
          ([false, true] as const).map((below) => (
            <Key
              key={String(below)}
              isOn={typed !== '' && isBelow(typed) === below}
              onPress={() => onType(withSign(typed, below))}
            >
              {text.phrase(`sign.${below ? signs.below : signs.above}`)}
            </Key>
          ))}
        {units.map((unit) => (
          <Key
            key={unit.text}
            isOn={unit.text === implied || hasUnit(typed, unit.text)}
            onPress={() => onType(withUnit(typed, unit.text))}
          >
            {unit.caption}
          </Key>
        ))}
      </div>
      {fractions.length > 0 && (
        <div className="pad-fractions">
          {fractions.map((one) => (
            <Key key={one} isOn={one === standing} onPress={() => onType(withFraction(typed, one))}>
              {one}
            </Key>
          ))}
        </div>
      )}
      <Digits {...props} />
    </fieldset>
  );
}

function Digits({ fractions, mark, typed, onType, onPrevious }: KeyPadProps) {
  const text = useText();
  const last = fractions.length > 0 ? '/' : '000';
  const type = (digit: string) => (): void => onType(withDigit(typed, digit));
  return (
    <div className="pad-digits">
      {['1', '2', '3'].map((digit) => (
        <Key key={digit} onPress={type(digit)}>
          {digit}
        </Key>
      ))}
      <Key className="pad-back" label={text.phrase('backspace')} onPress={() => onType(withoutLast(typed))}>
        <svg viewBox="0 0 32 24" width="32" height="24" aria-hidden="true">
          <path
            d="M10 3h19v18H10L2 12zM15 8l8 8m0-8-8 8"
            fill="none"
            stroke="currentColor"
            strokeWidth="2.5"
            strokeLinejoin="round"
          />
        </svg>
      </Key>
      {['4', '5', '6'].map((digit) => (
        <Key key={digit} onPress={type(digit)}>
          {digit}
        </Key>
      ))}
      <button
        type="button"
        className="pad-key pad-word"
        disabled={onPrevious === undefined}
        onClick={onPrevious}
      >
        {text.phrase('previous')}
      </button>
      {['7', '8', '9', mark, '0', last].map((digit) => (
        <Key key={digit} onPress={type(digit)}>
          {digit}
        </Key>
      ))}
      <button type="submit" className="pad-key pad-next">
        {text.phrase('next')}
      </button>
    </div>
  );
}

interface KeyProps {
  readonly className?: string;
  readonly isOn?: boolean;
  readonly label?: string;
  readonly onPress: () => void;
  readonly children: ReactNode;
}

function Key({ className = '', isOn = false, label, onPress, children }: KeyProps) {
  return (
    <button
      type="button"
      className={`pad-key ${isOn ? 'on' : ''} ${className}`}
      aria-pressed={isOn ? true : undefined}
      aria-label={label}
      onClick={onPress}
    >
      {children}
    </button>
  );
}

function keepFocus(event: React.PointerEvent): void {
  if (event.target instanceof Element && event.target.closest('.pad-next, .pad-word') === null)
    event.preventDefault();
}
