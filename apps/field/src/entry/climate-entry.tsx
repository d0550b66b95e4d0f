/** The place whose climate stands for this one: found by name, or the nearest to where the device is. */
import { catalog } from '@firstfire/reference';
import { useState } from 'react';
import { useText } from '../text/use-text.tsx';
import type { EntryForm } from './form.ts';
import { type Here, nearestPlaces } from './here.ts';
import { HereButton } from './here-button.tsx';
import { WalkKeys } from './walk-keys.tsx';

const MOST_SHOWN = 30;

export function ClimateEntry({ before, label, onTry, onNext, onPrevious, row }: EntryForm) {
  const text = useText();
  const [wanted, setWanted] = useState('');
  const [here, setHere] = useState<Here | undefined>();
  const distances = new Map(
    here === undefined ? [] : nearestPlaces(here).map((one) => [one.id, one.distance]),
  );
  const found = catalog.climate.PLACES.filter((place) =>
    place.name.toLocaleLowerCase().includes(wanted.trim().toLocaleLowerCase()),
  )
    .sort((a, b) => (distances.get(a.id) ?? 0) - (distances.get(b.id) ?? 0) || (a.name < b.name ? -1 : 1))
    .slice(0, MOST_SHOWN);
  return (
    <div className="entry">
      <div className="entry-scroll stack">
        <input
          type="search"
          className="text-input"
          aria-label={text.phrase('search-place')}
          placeholder={text.phrase('search-place')}
          value={wanted}
          onChange={(event) => setWanted(event.target.value)}
        />
        <HereButton onHere={setHere} />
        <fieldset className="entry-choices" aria-label={label}>
          {found.map(({ id, name }) => (
            <button
              key={id}
              type="button"
              className="pad-key entry-choice name"
              aria-pressed={before?.value === id}
              onPointerEnter={(event) => event.pointerType === 'mouse' && onTry({ value: id })}
              onPointerLeave={() => onTry(undefined)}
              onClick={() => onNext({ value: id })}
            >
              {name}
              {distances.has(id) && (
                <span className="second">
                  {' '}
                  {text.quantity(distances.get(id) ?? 0, {
                    unit: text.reader.system === 'us' ? 'mi' : 'km',
                    kind: 'length',
                    digits: 2,
                  })}
                </span>
              )}
            </button>
          ))}
        </fieldset>
      </div>
      {row}
      <WalkKeys onPrevious={onPrevious} onNext={() => onNext(undefined)} />
    </div>
  );
}
