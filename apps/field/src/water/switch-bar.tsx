/** The window of each pressure switch: over the water at rest, under the least the running pump gives. */
import type { WaterHeaterShown, WaterPicture } from '@firstfire/job';
import { useId, useRef } from 'react';
import { useText } from '../text/use-text.tsx';
import { bareText, pressureText, rpmText, scaleTo, shareOfTick } from './figures.ts';
import { partName, stateName } from './names.ts';
import type { Water } from './use-water.ts';
import { useWidth } from './use-width.ts';

export function SwitchBars({ water }: { readonly water: Water }) {
  const text = useText();
  const { picture } = water;
  const shown = picture.heaters.filter(
    (one) => one.switch.low !== undefined && one.switch.high !== undefined,
  );
  const byFlow = picture.heaters.filter((one) => one.switch.kind === 'flow');
  if (shown.length + byFlow.length === 0) return null;
  return (
    <section className="water-switch">
      <h2>{text.phrase('water.switch')}</h2>
      {shown.map((heater) => (
        <SwitchBar key={heater.id} heater={heater} picture={picture} />
      ))}
      {byFlow.length > 0 && <p className="second">{text.phrase('water.flow-switch')}</p>}
    </section>
  );
}

interface BarProps {
  readonly heater: WaterHeaterShown;
  readonly picture: WaterPicture;
}

interface Seen {
  readonly id: string;
  readonly label: string;
  readonly clean: number | undefined;
  readonly dirty: number | undefined;
}

const HEAD = 26;
const BAR = 34;
const ROW = 30;

function SwitchBar({ heater, picture }: BarProps) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  const hatch = useId();
  const width = useWidth(frame);
  const { low = 0, high = 0, setting } = heater.switch;
  const seen = seenBy(heater.id, picture, (speed) =>
    rpmText(picture.speeds.find(({ id }) => id === speed)?.speed, text),
  );
  const rest = restOf(heater.id, picture);
  const all = [low, high, setting ?? 0, rest, ...seen.flatMap(({ clean = 0, dirty = 0 }) => [clean, dirty])];
  const scale = scaleTo(Math.max(...all), 'pressure', { text, least: Math.min(...all) });
  const left = width < 560 ? 96 : 150;
  const x = (si: number): number => left + scale.at(si) * (width - left - 12);
  const foot = HEAD + BAR + 8 + seen.length * ROW;
  return (
    <div className="water-chart" ref={frame}>
      {picture.heaters.length > 1 && <h3>{partName(heater, 'heaters', text)}</h3>}
      <p className="second">{sentence()}</p>
      <svg width={width} height={foot + 26} role="img" aria-label={sentence()}>
        <defs>
          <pattern
            id={hatch}
            width="7"
            height="7"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path className="hatching" d="M0 0V7" />
          </pattern>
        </defs>
        <rect
          className="closed"
          x={left}
          y={HEAD}
          width={width - left - 12}
          height={BAR}
          fill={`url(#${hatch})`}
        />
        {high > low && <rect className="window" x={x(low)} y={HEAD} width={x(high) - x(low)} height={BAR} />}
        <path className="edge" d={`M${left} ${HEAD}H${width - 12}V${HEAD + BAR}H${left}Z`} />
        <text x="0" y={HEAD + BAR / 2 + 5} className="start label">
          {text.phrase('water.setting')}
        </text>
        {setting !== undefined && (
          <>
            <path className="setting" d={`M${x(setting)} ${HEAD - 6}v${BAR + 12}`} />
            <text x={x(setting)} y={HEAD - 10} className={x(setting) > width - 60 ? 'figure end' : 'figure'}>
              {pressureText(setting, text)}
            </text>
          </>
        )}
        {seen.map((row, i) => {
          const y = HEAD + BAR + 8 + i * ROW + ROW / 2;
          return (
            <g key={row.id}>
              <text x="0" y={y + 5} className="start small">
                {row.label}
              </text>
              <path className="grid" d={`M${left} ${y}H${width - 12}`} />
              {row.clean !== undefined && row.dirty !== undefined && (
                <path className="between" d={`M${x(row.dirty)} ${y}H${x(row.clean)}`} />
              )}
              {row.dirty !== undefined && <circle className="dirty" cx={x(row.dirty)} cy={y} r="6" />}
              {row.clean !== undefined && <circle className="clean" cx={x(row.clean)} cy={y} r="6" />}
            </g>
          );
        })}
        <path className="axis" d={`M${left} ${foot}H${width - 12}`} />
        {scale.ticks.map((tick) => (
          <text
            key={tick}
            x={left + shareOfTick(scale, tick, 'pressure') * (width - left - 12)}
            y={foot + 20}
            className="small"
          >
            {bareText(tick, text)}
          </text>
        ))}
      </svg>
    </div>
  );

  function sentence(): string {
    const slots = { low: pressureText(low, text), high: pressureText(high, text) };
    return text.phrase(high > low ? 'water.switch-between' : 'water.switch-nowhere', slots);
  }

  function seenBy(id: string, { states }: WaterPicture, rpm: (speed: string) => string): Seen[] {
    const pressure = (speed: string, basin: string, filter: string): number | undefined =>
      states
        .find((one) => one.speed === speed && one.basin === basin && one.filter === filter)
        ?.flowing?.heaters.find((one) => one.id === id)?.inletPressure;
    return states
      .filter((one) => one.heating && one.filter === 'clean')
      .map(({ speed, basin }) => ({
        id: `${speed} ${basin}`,
        label: width < 560 ? rpm(speed) : stateName(picture, { rpm: rpm(speed), basin }, text),
        clean: pressure(speed, basin, 'clean'),
        dirty: pressure(speed, basin, 'dirty'),
      }));
  }
}

function restOf(heater: string, { states }: WaterPicture): number {
  const rests = states.flatMap((one) => one.flowing?.heaters.filter(({ id }) => id === heater) ?? []);
  return Math.max(0, ...rests.map((one) => one.restPressure));
}
