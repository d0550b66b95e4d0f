/** What people call a part: taken when the field is left, or with Enter. */
import { useState } from 'react';
import { readingOf } from '../entry/reading.ts';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

interface NameFieldProps {
  readonly collection: string;
  readonly id: string;
  readonly name: string;
  /** Names one tap away. */
  readonly usual?: readonly string[];
}

export function NameField({ collection, id, name, usual = [] }: NameFieldProps) {
  const text = useText();
  const session = useSession();
  const [typed, setTyped] = useState<string | undefined>();
  const take = (value: string): void => {
    setTyped(undefined);
    const clean = value.trim();
    if (clean === name || clean === '') return;
    const reading = readingOf({ value: clean, how: 'told' });
    session.edit([{ type: 'set', collection, element: id, field: 'name', value: reading }]);
  };
  return (
    <div className="gas-name">
      <label>
        <span className="second">{text.phrase('gas.name')}</span>
        <input
          className="text-input"
          value={typed ?? name}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={() => typed !== undefined && take(typed)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') take(event.currentTarget.value);
            if (event.key === 'Escape') event.stopPropagation();
          }}
        />
      </label>
      {name === '' && usual.length > 0 && (
        <div className="gas-chips">
          {usual.map((one) => (
            <button key={one} type="button" onClick={() => take(one)}>
              {one}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}
