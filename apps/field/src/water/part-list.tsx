/** What the picture shows, as a list: a row taken in hand opens its readings, and is marked in the picture. */
import { memo } from 'react';
import { useText } from '../text/use-text.tsx';
import { PartReadings } from './part-card.tsx';
import { type PartRow, partRows } from './part-rows.ts';
import type { Chosen } from './use-chosen.ts';
import type { Water } from './use-water.ts';

interface ListProps {
  readonly water: Water;
  readonly chosen: Chosen;
}

export const PartList = memo(function PartList({ water, chosen }: ListProps) {
  const text = useText();
  const { picture, state } = water;
  return (
    <section className="water-list">
      <h2>{text.phrase('water.along')}</h2>
      <ol>
        {partRows({ picture, state, text }).map((row) => {
          const isTaken = row.id === chosen.id;
          return (
            <li key={row.id}>
              <Row row={row} isTaken={isTaken} onTake={() => chosen.take(row.id, 'list')} />
              {isTaken && chosen.from === 'list' && <PartReadings row={row} />}
            </li>
          );
        })}
      </ol>
    </section>
  );
});

interface RowProps {
  readonly row: PartRow;
  readonly isTaken: boolean;
  readonly onTake: () => void;
}

function Row({ row: { name, figures, missing }, isTaken, onTake }: RowProps) {
  const text = useText();
  const [first, ...more] = figures;
  const [path] = missing;
  return (
    <button
      type="button"
      className={path === undefined ? 'water-row' : 'water-row missing'}
      aria-pressed={isTaken}
      onClick={onTake}
    >
      <span>
        {name}
        <span className="second">
          {' '}
          {path === undefined
            ? more.join(' · ')
            : text.phrase('water.missing', { reading: text.field(...fieldAt(path)) })}
        </span>
      </span>
      <strong>{path === undefined ? (first ?? '–') : '?'}</strong>
    </button>
  );
}

function fieldAt(path: string): [collection: string, field: string] {
  const [collection = '', , field = ''] = path.split('/');
  return [collection, field];
}
