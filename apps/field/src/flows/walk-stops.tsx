/** The stations of a walk with what is to be read at each. */
import { Link } from 'wouter';
import type { Missing } from '../next/measure-next.ts';
import { answersOf } from '../next/rounds.ts';
import { type Stop, walkOf } from '../next/walk.ts';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';

/** Readings shown of a station before it is opened. */
const SHOWN = 6;

export function FirstStop({ stop: { station, readings, minutes } }: { readonly stop: Stop }) {
  const text = useText();
  return (
    <section className="stop" aria-label={text.phrase(`station.${station}`)}>
      <h2>{text.phrase(`station.${station}`)}</h2>
      <p className="second">{text.phrase('stop-left', { count: readings.length, minutes })}</p>
      <Readings readings={readings.slice(0, SHOWN)} />
      {readings.length > SHOWN && (
        <details>
          <summary>{text.phrase('more', { count: readings.length - SHOWN })}</summary>
          <Readings readings={readings.slice(SHOWN)} />
        </details>
      )}
    </section>
  );
}

/** The second round: a screen of questions for each station, and what has to be taken there. */
export function RestStops({ rest }: { readonly rest: readonly Missing[] }) {
  const text = useText();
  if (rest.length === 0) return null;
  return (
    <section aria-label={text.phrase('second-round')}>
      <h2 className="second-round">{text.phrase('second-round')}</h2>
      <p className="second">{text.phrase('second-round-help', { count: rest.length })}</p>
      {walkOf(rest).map((stop) => (
        <RestStop key={stop.station} stop={stop} />
      ))}
    </section>
  );
}

function RestStop({ stop: { station, readings } }: { readonly stop: Stop }) {
  const { doc } = useSession();
  const text = useText();
  const questions = readings.filter(({ path }) => answersOf(path) !== undefined);
  const taken = readings.filter(({ path }) => answersOf(path) === undefined);
  return (
    <div className="stop">
      <h3>{text.phrase(`station.${station}`)}</h3>
      <div className="stop-ways">
        {questions.length > 0 && (
          <Link className="button" href={`/jobs/${doc}/questions/${station}`}>
            {text.phrase('questions-here', { count: questions.length })}
          </Link>
        )}
        {taken[0] !== undefined && (
          <Link className="button plain" href={`/jobs/${doc}/read/${taken[0].path}`}>
            {text.phrase('readings-here', { count: taken.length })}
          </Link>
        )}
      </div>
    </div>
  );
}

export function Readings({ readings }: { readonly readings: readonly Missing[] }) {
  const { doc } = useSession();
  const text = useText();
  return (
    <ul className="stop-list">
      {readings.map(({ path, settles }) => (
        <li key={path}>
          <Link className="reading" href={`/jobs/${doc}/read/${path}`}>
            <span>{text.path(path)}</span>
            <span className="second">{text.phrase('settles', { count: settles })}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
