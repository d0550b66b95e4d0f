/** How long it takes until the water is warm: the figures in a line, the chart, the flag moved by steps. */
import type { HeatBasinShown } from '@firstfire/job';
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { MovePad } from '../ui/move-pad.tsx';
import { type Slide, useSlide } from '../ui/use-slide.ts';
import { Ghost } from './blank.tsx';
import { hoursText, timeText } from './figures.ts';
import { flagSliding, flagSteps } from './flag.ts';
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
  const slide = useSlide();
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
          <WarmChart heat={heat} basin={basin} warmUp={warmUp} slide={slide} />
          {warmUp.time !== undefined && <p className="second">{text.phrase('heat.beyond')}</p>}
          <FlagRow basin={basin} slide={slide} />
        </>
      )}
    </section>
  );
}

/** The same by steps, and by number. */
function FlagRow({ basin, slide }: { readonly basin: HeatBasinShown; readonly slide: Slide }) {
  const text = useText();
  const { doc } = useSession();
  const { id, wanted } = basin;
  if (wanted === undefined)
    return (
      <Link className="button main" href={`/jobs/${doc}/read/basins/${id}/warmUpTime`}>
        {text.phrase('heat.set-wanted')}
      </Link>
    );
  const { steps, usual } = flagSteps(wanted);
  return (
    <MovePad
      key={`${id} ${usual}`}
      slide={slide}
      sliding={flagSliding(id, wanted)}
      legend={text.field('basins', 'warmUpTime')}
      less={text.phrase('heat.sooner')}
      more={text.phrase('heat.later')}
      steps={steps}
      usual={usual}
      stepText={(step) => hoursText(step, text)}
    >
      <strong>{text.phrase('heat.wanted-in', { time: timeText(wanted, text) })}</strong>
    </MovePad>
  );
}
