/** The part in hand: what it shows now, and its readings, each one tap from being entered. */
import { useText } from '../text/use-text.tsx';
import { ReadingLine } from '../ui/reading-line.tsx';
import { type PartRow, partRows } from './part-rows.ts';
import type { Chosen } from './use-chosen.ts';
import type { Water } from './use-water.ts';

/** Under the picture, where a part was taken there. */
export function PartCard({ water, chosen }: { readonly water: Water; readonly chosen: Chosen }) {
  const text = useText();
  const { picture, state } = water;
  if (chosen.id === undefined || chosen.from !== 'picture') return null;
  const row = partRows({ picture, state, text }).find(({ id }) => id === chosen.id);
  if (row === undefined) return null;
  const [first, ...more] = row.figures;
  return (
    <section className="water-card" aria-label={row.name}>
      <h3>{row.name}</h3>
      <p role="status">
        <b>{first ?? (row.missing.length > 0 ? '?' : '–')}</b>{' '}
        <span className="second">{more.join(' · ')}</span>
      </p>
      <PartReadings row={row} />
    </section>
  );
}

export function PartReadings({ row }: { readonly row: PartRow }) {
  return [...new Set([...row.missing, ...row.readings])].map((path) => (
    <ReadingLine key={path} path={path} />
  ));
}
