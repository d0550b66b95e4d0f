/** Values of one reading that were entered without sight of each other: each with who and when; one is chosen. */
import { type FieldAt, secondValues, type Written } from '../session/field-history.ts';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { valueText, whoWrote } from './who-wrote.ts';
import './history.css';

export function SecondValues({ at }: { readonly at: FieldAt }) {
  const { document } = useMoment();
  const text = useText();
  const values = secondValues(document, at);
  if (values.length === 0) return null;
  return (
    <div className="second-values">
      <p>{text.phrase('second-values')}</p>
      <ul>
        {values.map((one, index) => (
          <Value key={one.id} one={one} at={at} stands={index === 0} />
        ))}
      </ul>
    </div>
  );
}

interface ValueProps {
  readonly one: Written;
  readonly at: FieldAt;
  readonly stands: boolean;
}

function Value({ one, at: { collection, id, field }, stands }: ValueProps) {
  const session = useSession();
  const text = useText();
  const value = valueText(one.value, text);
  const use = (): void => {
    session.edit([
      { type: 'set', collection, ...(id === '-' ? {} : { element: id }), field, value: one.value },
    ]);
  };
  return (
    <li>
      <span>
        <strong>{value}</strong>{' '}
        <span className="second">
          {whoWrote(one, session.replica, text)}
          {stands && ` · ${text.phrase('second-stands')}`}
        </span>
      </span>
      <button
        type="button"
        className="button plain"
        aria-label={text.phrase('second-use-name', { value })}
        onClick={use}
      >
        {text.phrase('second-use')}
      </button>
    </li>
  );
}
