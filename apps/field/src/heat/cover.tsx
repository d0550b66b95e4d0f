/** Hours a day under the cover, as a bar one takes by its edge: by finger, arrows, steps or number. */
import { quantity } from '@firstfire/engine';
import type { HeatBasinShown } from '@firstfire/job';
import { useRef } from 'react';
import type { AppText } from '../text/app-text.ts';
import { useText } from '../text/use-text.tsx';
import { MovePad } from '../ui/move-pad.tsx';
import { ReadingLink } from '../ui/reading-link.tsx';
import { type Slide, useSlide } from '../ui/use-slide.ts';
import { useWidth } from '../water/use-width.ts';
import { COVER_STEPS, coverSliding, USUAL_COVER_STEP } from './cover-hours.ts';
import { hoursText } from './figures.ts';

interface PartProps {
  readonly basin: HeatBasinShown;
}

const { DAY, HOUR } = quantity;

export function Cover({ basin }: PartProps) {
  const text = useText();
  const { cover } = basin;
  if (cover.kind === '' || cover.kind === 'none')
    return (
      <div className="heat-cover">
        <p className="second">{text.phrase('heat.cover-none')}</p>
        <ReadingLink path={`basins/${basin.id}/cover`} />
      </div>
    );
  return <Hours basin={basin} />;
}

function Hours({ basin }: PartProps) {
  const text = useText();
  const slide = useSlide();
  const { id, cover } = basin;
  const hours = cover.hours ?? 0;
  return (
    <div className="heat-cover">
      <p>
        <b>{text.choice(cover.kind)}</b> <span>{windowText(basin, text)}</span>
      </p>
      <Bar basin={basin} hours={hours} slide={slide} />
      <MovePad
        slide={slide}
        sliding={coverSliding(id, hours)}
        legend={text.field('basins', 'coverHours')}
        less={text.phrase('heat.cover-less')}
        more={text.phrase('heat.cover-more')}
        steps={COVER_STEPS}
        usual={USUAL_COVER_STEP}
        stepText={(step) => hoursText(step, text)}
      >
        <strong>{text.phrase('heat.covered-for', { time: hoursText(hours, text) })}</strong>
      </MovePad>
    </div>
  );
}

function windowText({ cover: { hours = 0, on, off } }: HeatBasinShown, text: AppText): string {
  if (hours <= 0) return text.phrase('heat.cover-never');
  if (hours >= DAY) return text.phrase('heat.cover-always');
  return text.phrase('heat.cover-window', { on: clockText(on, text), off: clockText(off, text) });
}

/** `8:30 PM`, of 20.5. */
function clockText(hour: number, text: AppText): string {
  const format = new Intl.DateTimeFormat(text.reader.speech.locale, {
    hour: 'numeric',
    minute: '2-digit',
    timeZone: 'UTC',
  });
  return format.format(new Date(Date.UTC(2001, 0, 1) + hour * 3_600_000));
}

interface BarProps extends PartProps {
  readonly hours: number;
  readonly slide: Slide;
}

const HIGH = 46;
const GRIP = 56;
const EDGE = 4;
const TICKS = [0, 6, 12, 18, 24] as const;

function Bar({ basin, hours, slide }: BarProps) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const long = Math.max(width - 2 * EDGE, 1);
  const x = EDGE + (hours / DAY) * long;
  const events = slide.events(coverSliding(basin.id, hours), () => {
    const left = (frame.current?.getBoundingClientRect().x ?? 0) + EDGE;
    return ({ clientX }) => ((clientX - left) / long) * DAY;
  });
  return (
    <div ref={frame} className="picture-chart heat-cover-bar">
      <svg width={width} height={HIGH + 26} aria-hidden="true">
        <rect className="open" x={EDGE} y="4" width={long} height={HIGH - 8} />
        <rect className="on" x={EDGE} y="4" width={x - EDGE} height={HIGH - 8} />
        {TICKS.map((tick) => (
          <text
            key={tick}
            x={EDGE + (tick / 24) * long}
            y={HIGH + 18}
            className={tick === 0 ? 'small start' : tick === 24 ? 'small end' : 'small'}
          >
            {tick === 24 ? hoursText(tick * HOUR, text) : tick}
          </text>
        ))}
        <path className="edge" d={`M${x} 0V${HIGH}`} />
        <circle className="knob" cx={x} cy={HIGH / 2} r="11" />
      </svg>
      <div
        className="heat-cover-grip"
        style={{ left: x - GRIP / 2, top: 0, height: HIGH }}
        role="slider"
        tabIndex={0}
        aria-label={text.field('basins', 'coverHours')}
        aria-valuemin={0}
        aria-valuemax={24}
        aria-valuenow={hours / HOUR}
        aria-valuetext={`${hoursText(hours, text)}; ${windowText(basin, text)}`}
        {...events}
      />
    </div>
  );
}
