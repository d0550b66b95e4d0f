/** What the picture shows, as a list: each row opens its reading. */
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { type PartRow, partRows } from './part-rows.ts';
import type { Water } from './use-water.ts';

export function PartList({ water }: { readonly water: Water }) {
  const text = useText();
  const { picture, state } = water;
  return (
    <section className="water-list">
      <h2>{text.phrase('water.along')}</h2>
      <ol>
        {partRows({ picture, state, text }).map((row) => (
          <li key={row.id}>
            <Row row={row} />
          </li>
        ))}
      </ol>
    </section>
  );
}

function Row({ row: { name, figures, path, missing } }: { readonly row: PartRow }) {
  const { doc } = useSession();
  const text = useText();
  const [first, ...more] = figures;
  return (
    <Link
      className={missing.length > 0 ? 'water-row missing' : 'water-row'}
      href={`/jobs/${doc}/read/${path}`}
    >
      <span>
        {name}
        {missing.length > 0 ? (
          <span className="second">
            {' '}
            {text.phrase('water.missing', { reading: text.field(...fieldAt(path)) })}
          </span>
        ) : (
          <span className="second"> {more.join(' · ')}</span>
        )}
      </span>
      <strong>{missing.length > 0 ? '?' : (first ?? '–')}</strong>
    </Link>
  );
}

function fieldAt(path: string): [collection: string, field: string] {
  const [collection = '', , field = ''] = path.split('/');
  return [collection, field];
}
