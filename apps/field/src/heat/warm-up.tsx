/** How long it takes until the water is warm: the figures in a line, the chart, the flag moved by steps. */
import type { HeatBasinShown } from '@firstfire/job';
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { Ghost } from './blank.tsx';
import { timeText } from './figures.ts';
import { type Flag, useFlag } from './use-flag.ts';
import type { Heat } from './use-heat.ts';
import { verdictText } from './verdict.ts';
import { Waiting } from './waiting.tsx';
import { WarmChart } from './warm-chart.tsx';

interface PartProps {
  readonly heat: Heat;
  readonly basin: HeatBasinShown;
}

export function WarmUp({ heat, basin }: PartProps) {
  const text = useText();
  const flag = useFlag(basin.id, basin.wanted ?? 0);
  const { warmUp } = basin;
  return (
    <section className="heat-warm">
      <h2>{text.phrase('heat.warm-up')}</h2>
      {warmUp === undefined ? (
        <>
          <Ghost />
          <Waiting missing={basin.missing} issues={basin.issues} />
        </>
      ) : (
        <>
          <p className="heat-line">
            <strong>
              {warmUp.time === undefined
                ? text.phrase('heat.never')
                : text.phrase('heat.warm-after', { time: timeText(warmUp.time, text) })}
            </strong>
            {basin.wanted !== undefined && <span>{verdictText(basin, text)}</span>}
          </p>
          <WarmChart heat={heat} basin={basin} warmUp={warmUp} flag={flag} />
          {warmUp.time !== undefined && <p className="second">{text.phrase('heat.beyond')}</p>}
          <FlagRow basin={basin} flag={flag} />
        </>
      )}
    </section>
  );
}

/** The same by steps, and by number. */
function FlagRow({ basin, flag }: { readonly basin: HeatBasinShown; readonly flag: Flag }) {
  const text = useText();
  const { doc } = useSession();
  const entry = `/jobs/${doc}/read/basins/${basin.id}/warmUpTime`;
  if (basin.wanted === undefined)
    return (
      <Link className="button main" href={entry}>
        {text.phrase('heat.set-wanted')}
      </Link>
    );
  return (
    <fieldset className="heat-turn">
      <legend className="sr">{text.field('basins', 'warmUpTime')}</legend>
      <button
        type="button"
        className="button"
        aria-label={text.phrase('heat.sooner')}
        onClick={() => flag.step(-1)}
      >
        ◂
      </button>
      <Link className="heat-number" href={entry}>
        <strong>{text.phrase('heat.wanted-in', { time: timeText(basin.wanted, text) })}</strong>
      </Link>
      <button
        type="button"
        className="button"
        aria-label={text.phrase('heat.later')}
        onClick={() => flag.step(1)}
      >
        ▸
      </button>
    </fieldset>
  );
}
