/** Fittings of a section, counted by steppers. */
import { type GasLink, RECORD_BY_COLLECTION } from '@firstfire/job';
import { readingOf } from '../entry/reading.ts';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { fittingCount } from './figures.ts';

const FIELD = RECORD_BY_COLLECTION.get('gasSegments')?.fields['fittings'];
const FITTINGS = FIELD?.type === 'counts' ? FIELD.of : [];

export function Fittings({ link }: { readonly link: GasLink }) {
  const text = useText();
  const session = useSession();
  const put = (name: string, count: number): void => {
    const value = { ...link.fittings, [name]: Math.max(0, count) };
    session.edit([
      {
        type: 'set',
        collection: 'gasSegments',
        element: link.id,
        field: 'fittings',
        value: readingOf({ value, how: 'measured' }),
      },
    ]);
  };
  return (
    <details className="gas-fittings">
      <summary>
        {text.field('gasSegments', 'fittings')} <b>{fittingCount(link)}</b>
      </summary>
      <ul>
        {FITTINGS.map((name) => (
          <li key={name}>
            <span>{text.choice(name)}</span>
            <Stepper
              name={text.choice(name)}
              count={link.fittings[name] ?? 0}
              onPut={(count) => put(name, count)}
            />
          </li>
        ))}
      </ul>
    </details>
  );
}

interface StepperProps {
  readonly name: string;
  readonly count: number;
  readonly onPut: (count: number) => void;
}

function Stepper({ name, count, onPut }: StepperProps) {
  const text = useText();
  return (
    <span className="gas-stepper">
      <button
        type="button"
        aria-label={text.phrase('one-less', { name })}
        disabled={count === 0}
        onClick={() => onPut(count - 1)}
      >
        −
      </button>
      <output>{count}</output>
      <button type="button" aria-label={text.phrase('one-more', { name })} onClick={() => onPut(count + 1)}>
        +
      </button>
    </span>
  );
}
