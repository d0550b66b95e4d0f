/** The pad: units and fractions as keys, digits large enough for gloves. It only types; the field says what was read. */
import { useText } from '../text/use-text.tsx';
import type { Keys } from './keys.ts';

export interface KeyPadProps {
  readonly keys: Keys;
  readonly typed: string;
  readonly onType: (typed: string) => void;
  readonly onNext: () => void;
}

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0', '-'];

export function KeyPad({ keys, typed, onType, onNext }: KeyPadProps) {
  const text = useText();
  return (
    <div className="key-pad">
      <div className="keys units">
        {keys.units.map((unit) => (
          <button key={unit} type="button" className="key" onClick={() => onType(withUnit(typed, unit))}>
            {text.unit(unit)}
          </button>
        ))}
      </div>
      {keys.fractions.length > 0 && (
        <div className="keys fractions">
          {keys.fractions.map((one) => (
            <button key={one} type="button" className="key" onClick={() => onType(withFraction(typed, one))}>
              {one}
            </button>
          ))}
        </div>
      )}
      <div className="keys digits">
        {DIGITS.map((digit) => (
          <button key={digit} type="button" className="key" onClick={() => onType(typed + digit)}>
            {digit}
          </button>
        ))}
        <button
          type="button"
          className="key back-key"
          onClick={() => onType(typed.replace(/\s*\S$/u, ''))}
          aria-label={text.phrase('backspace')}
        >
          ⌫
        </button>
        <button type="button" className="key next-key" onClick={onNext}>
          {text.phrase('next')}
        </button>
      </div>
    </div>
  );
}

/** `27` and ft → `27 ft `, so that `9 in` may follow; a unit after a unit takes its place. */
export function withUnit(typed: string, unit: string): string {
  const bare = typed.trimEnd();
  if (bare === '') return '';
  const [, before = ''] = /^(.*\d)\s*[^\d\s][^\d]*$/u.exec(bare) ?? [];
  return `${before === '' ? bare : before} ${unit} `;
}

/** `27 ft 9` and 1/2 → `27 ft 9-1/2`; a sixteenth goes one up at each tap. */
export function withFraction(typed: string, fraction: string): string {
  const [, before = '', sixteenths = ''] = /^(.*?)-?(\d+)\/16$/u.exec(typed) ?? [];
  if (fraction === '1/16' && sixteenths !== '') {
    const next = Number(sixteenths) + 2;
    return next > 15 ? before : joined(before, `${next}/16`);
  }
  return joined(typed.replace(/-?\d+\/\d+$/u, ''), fraction);
}

function joined(before: string, fraction: string): string {
  return /\d$/u.test(before) ? `${before}-${fraction}` : `${before}${fraction}`;
}
