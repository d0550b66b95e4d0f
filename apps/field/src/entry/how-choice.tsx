/** How a reading is known: one tap, and it stays until changed. */
import type { HowKnown } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { HOW } from './understood.ts';

export interface HowChoiceProps {
  readonly value: HowKnown;
  readonly onChange: (how: HowKnown) => void;
}

export function HowChoice({ value, onChange }: HowChoiceProps) {
  const text = useText();
  return (
    <fieldset className="how">
      <legend className="sr">{text.phrase('how')}</legend>
      {HOW.map((how) => (
        <label key={how} className={how === value ? 'chosen' : ''}>
          <input type="radio" name="how" checked={how === value} onChange={() => onChange(how)} />
          {text.phrase(`how.${how}`)}
        </label>
      ))}
    </fieldset>
  );
}
