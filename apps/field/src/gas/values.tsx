/** The figures of the picture in their fixed places above it, clear of the finger. */
import type { ByState, GasHeaterSeen, GasPicture, GasState } from '@firstfire/job';
import { Link } from 'wouter';
import { useMoment, useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { ReadingLink } from '../ui/reading-link.tsx';
import { bare, pressure, pressureUnit } from './figures.ts';

export interface ValuesProps {
  readonly picture: GasPicture;
  readonly heater: GasHeaterSeen;
  readonly state: GasState;
  readonly plusMinus: ByState;
}

export function Values({ picture, heater, state, plusMinus }: ValuesProps) {
  const text = useText();
  const [start, end, off] = [picture.outlet[state], heater.pressures[state], plusMinus[state]];
  const limit = state === 'all-off' ? heater.greatest : heater.least;
  const unit = pressureUnit(Math.max(end ?? 0, limit ?? 0), text);
  return (
    <dl className="gas-values">
      <div>
        <dt>{text.phrase(picture.metered ? 'gas.at-regulator' : 'gas.at-supply')}</dt>
        <dd>{start === undefined ? '?' : pressure(start, text)}</dd>
      </div>
      <div>
        <dt>{text.phrase('gas.at-heater')}</dt>
        <dd>
          <b>{end === undefined ? '?' : pressure(end, text, limit)}</b>
          <span className="second gas-off">
            {end !== undefined && off !== undefined && off > 0 ? `± ${bare(off, unit, text)}` : ' '}
          </span>
        </dd>
      </div>
      <div>
        <dt>{text.phrase(state === 'all-off' ? 'gas.bears' : 'gas.needs')}</dt>
        <dd>
          {limit !== undefined ? (
            pressure(limit, text, end)
          ) : (
            <ReadingLink
              path={`heaters/${heater.id}/${state === 'all-off' ? 'inletGreatest' : 'inletLeast'}`}
            />
          )}
        </dd>
      </div>
    </dl>
  );
}

const FIRST = 4;

/** What the picture waits for, one tap from being entered. */
export function Waiting({ picture, state }: Pick<ValuesProps, 'picture' | 'state'>) {
  const text = useText();
  const { missing, issues } = picture.states[state];
  if (missing.length === 0 && issues.length === 0) return null;
  return (
    <div className="gas-waiting">
      <p>
        {text.phrase(missing.length > 0 ? 'gas.waits-for' : 'gas.no-solution')}
        {missing.length === 0 && ` ${issues.map((issue) => text.path(issue.where)).join(', ')}`}
      </p>
      {missing.slice(0, FIRST).map((path) => (
        <WaitingFor key={path} path={path} />
      ))}
      {missing.length > FIRST && (
        <details>
          <summary>{text.phrase('gas.more', { count: missing.length - FIRST })}</summary>
          {missing.slice(FIRST).map((path) => (
            <WaitingFor key={path} path={path} />
          ))}
        </details>
      )}
    </div>
  );
}

/** By the name of its record too: there may be many lengths. */
function WaitingFor({ path }: { readonly path: string }) {
  const text = useText();
  const { view } = useMoment();
  const { doc } = useSession();
  const [collection = '', id = '', field = ''] = path.split('/');
  const name = view.record(collection, id).reading('name')?.value;
  const record = typeof name === 'string' && name !== '' ? name : text.record(collection);
  return (
    <Link className="reading-link" href={`/jobs/${doc}/read/${path}`}>
      {text.phrase('record-field', { record, field: text.field(collection, field) })}
    </Link>
  );
}
