/** A nominal size: a grid of names from the catalogue, one tap, never a number. */
import { useState } from 'react';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import type { EntryForm } from './form.ts';
import { SizeRing } from './size-ring.tsx';
import { boreOf, sizesOf } from './sizes.ts';
import { WalkKeys } from './walk-keys.tsx';

export function SizeEntry({ at, before, label, onTry, onNext, onPrevious, row }: EntryForm) {
  const text = useText();
  const { view } = useMoment();
  const [typed, setTyped] = useState('');
  const material = view.record(at.collection, at.id).reading('material')?.value;
  const known = typeof material === 'string' ? material : undefined;
  return (
    <form
      className="entry"
      onSubmit={(event) => {
        event.preventDefault();
        onNext(typed.trim() === '' ? undefined : { value: typed.trim() });
      }}
    >
      <div className="entry-scroll">
        {sizesOf(at.collection, known).map(({ material: of, names }) => (
          <fieldset key={of} aria-label={`${label}, ${text.choice(of)}`}>
            <h2 className="entry-group">{text.choice(of)}</h2>
            <div className="entry-sizes">
              {names.map((name) => (
                <button
                  key={name}
                  type="button"
                  className="pad-key"
                  aria-pressed={before?.value === name}
                  onPointerEnter={(event) => event.pointerType === 'mouse' && onTry({ value: name })}
                  onPointerLeave={() => onTry(undefined)}
                  onFocus={(event) => event.target.matches(':focus-visible') && onTry({ value: name })}
                  onClick={() => onNext({ value: name })}
                >
                  <Ring collection={at.collection} material={of} name={name} />
                  {name}
                </button>
              ))}
            </div>
          </fieldset>
        ))}
        <label className="entry-field">
          <span>{text.phrase('size-other')}</span>
          <input
            className="text-input"
            maxLength={20}
            autoComplete="off"
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
        </label>
      </div>
      {row}
      <WalkKeys onPrevious={onPrevious} />
    </form>
  );
}

interface RingProps {
  readonly collection: string;
  readonly material: string;
  readonly name: string;
}

function Ring({ collection, material, name }: RingProps) {
  const bore = boreOf(collection, material, name);
  return bore === undefined ? null : <SizeRing bore={bore} />;
}
