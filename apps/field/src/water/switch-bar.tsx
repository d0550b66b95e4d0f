/** The window of a pressure switch: over the water at rest, under the least that the running pump gives. */
import type { WaterHeaterShown, WaterPicture } from '@firstfire/job';
import { useId, useRef } from 'react';
import { useText } from '../text/use-text.tsx';
import { pressureText, scaleTo } from './figures.ts';
import { type SpeedRow, speedRows } from './flow-row.ts';
import { Dots } from './flow-rows.tsx';
import { partName } from './names.ts';
import { Ticks } from './ticks.tsx';
import type { Water } from './use-water.ts';
import { useWidth } from './use-width.ts';

export function SwitchWindow({ water }: { readonly water: Water }) {
  const text = useText();
  const { picture, look } = water;
  const heater = picture.heaters.find(({ id }) => id === look.heater);
  if (heater === undefined) return null;
  const { low, high, kind } = heater.switch;
  const byFlow = kind === 'flow';
  if (!byFlow && (low === undefined || high === undefined)) return null;
  return (
    <section className="water-switch">
      <h2>
        {text.phrase('water.switch')}
        {picture.heaters.length > 1 && ` · ${partName(heater, 'heaters', text)}`}
      </h2>
      {byFlow && <p className="second">{text.phrase('water.flow-switch')}</p>}
      {!byFlow && <SwitchBar heater={heater} picture={picture} />}
    </section>
  );
}

const HEAD = 28;
const BAR = 34;
const ROW = 36;

interface BarProps {
  readonly heater: WaterHeaterShown;
  readonly picture: WaterPicture;
}

function SwitchBar({ heater, picture }: BarProps) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const { low = 0, high = 0, setting } = heater.switch;
  const rows = rowsOf({ heater, picture }, text);
  const all = [low, high, setting ?? 0, ...rows.flatMap(({ clean = 0, dirty = 0 }) => [clean, dirty])];
  const scale = scaleTo(Math.max(...all), 'pressure', { text, least: Math.min(...all) });
  const [left, right] = [width < 560 ? 118 : 150, width - 12];
  const x = (si: number): number => left + scale.at(si) * (right - left);
  const foot = HEAD + BAR + 8 + rows.length * ROW;
  const slots = { low: pressureText(low, text), high: pressureText(high, text) };
  const sentence = text.phrase(high > low ? 'water.switch-between' : 'water.switch-nowhere', slots);
  return (
    <div className="picture-chart water-chart" ref={frame}>
      <p className="second">{sentence}</p>
      <svg width={width} height={foot + 28} role="img" aria-label={sentence}>
        <Window heater={heater} {...{ x, left, right }} />
        {rows.map((row, i) => (
          <Seen key={row.id} row={row} y={HEAD + BAR + 8 + (i + 0.5) * ROW} {...{ x, left, right }} />
        ))}
        <Ticks scale={scale} kind="pressure" {...{ left, right, foot }} />
      </svg>
    </div>
  );
}

/** What the switch sees: with the pump off first, then at every speed. */
function rowsOf({ heater, picture }: BarProps, text: ReturnType<typeof useText>): readonly SpeedRow[] {
  const running = speedRows(picture, { heater: heater.id, figure: (one) => one.inletPressure }, text);
  const rests = picture.states.flatMap(
    (one) => one.flowing?.heaters.filter(({ id }) => id === heater.id) ?? [],
  );
  if (rests.length === 0) return running;
  const rest = Math.max(...rests.map((one) => one.restPressure));
  const still = {
    id: '-',
    speed: '',
    basin: '',
    label: text.phrase('water.at-rest'),
    clean: rest,
    dirty: undefined,
  };
  return [still, ...running].map((row) => ({ ...row, label: row.label.replace(' · ', '\n') }));
}

interface Across {
  readonly x: (si: number) => number;
  readonly left: number;
  readonly right: number;
}

function Window({ heater, x, left, right }: Across & { readonly heater: WaterHeaterShown }) {
  const text = useText();
  const hatch = useId();
  const { low = 0, high = 0, setting } = heater.switch;
  return (
    <>
      <defs>
        <pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path className="hatching" d="M0 0V7" />
        </pattern>
      </defs>
      <rect x={left} y={HEAD} width={right - left} height={BAR} fill={`url(#${hatch})`} />
      {high > low && <rect className="window" x={x(low)} y={HEAD} width={x(high) - x(low)} height={BAR} />}
      <path className="edge" d={`M${left} ${HEAD}H${right}V${HEAD + BAR}H${left}Z`} />
      <text x="0" y={HEAD + BAR / 2 + 5} className="start label">
        {text.phrase('water.setting')}
      </text>
      {setting !== undefined && (
        <>
          <path className="setting" d={`M${x(setting)} ${HEAD - 6}v${BAR + 12}`} />
          <text x={x(setting)} y={HEAD - 11} className={x(setting) > right - 50 ? 'figure end' : 'figure'}>
            {pressureText(setting, text)}
          </text>
        </>
      )}
    </>
  );
}

function Seen({ row, y, x, left, right }: Across & { readonly row: SpeedRow; readonly y: number }) {
  const [first = '', second] = row.label.split('\n');
  return (
    <g>
      <text x="0" y={second === undefined ? y + 5 : y - 2} className="start small">
        {first}
      </text>
      {second !== undefined && (
        <text x="0" y={y + 14} className="start small">
          {second}
        </text>
      )}
      <path className="grid" d={`M${left} ${y}H${right}`} />
      <Dots row={row} x={x} y={y} />
    </g>
  );
}
