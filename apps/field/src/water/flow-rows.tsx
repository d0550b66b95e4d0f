/** Heater flow at every speed, filter clean and due, between the least and the greatest the heater bears. */
import type { WaterHeaterShown, WaterPicture } from '@firstfire/job';
import { useRef, useState } from 'react';
import { useText } from '../text/use-text.tsx';
import { bareText, flowText, rpmText, scaleTo, shareOfTick } from './figures.ts';
import { nameIn, partName } from './names.ts';
import { Choice } from './state-choice.tsx';
import type { Water } from './use-water.ts';
import { useWidth } from './use-width.ts';

interface Row {
  readonly id: string;
  readonly speed: string;
  readonly label: string;
  readonly basin: string;
  readonly clean: number | undefined;
  readonly dirty: number | undefined;
}

function rowsOf({ states, heaters }: WaterPicture, heater: string): Omit<Row, 'label'>[] {
  if (heaters.length === 0) return [];
  const flow = (speed: string, basin: string, filter: string): number | undefined =>
    states
      .find((one) => one.speed === speed && one.basin === basin && one.filter === filter)
      ?.flowing?.heaters.find(({ id }) => id === heater)?.flow;
  return states
    .filter((one) => one.heating && one.filter === 'clean')
    .map(({ speed, basin }) => ({
      id: `${speed} ${basin}`,
      speed,
      basin,
      clean: flow(speed, basin, 'clean'),
      dirty: flow(speed, basin, 'dirty'),
    }));
}

export function FlowRows({ water }: { readonly water: Water }) {
  const text = useText();
  const { picture } = water;
  const [asked, setAsked] = useState('');
  const heater = picture.heaters.find(({ id }) => id === asked) ?? picture.heaters[0];
  if (heater === undefined) return null;
  const rows = rowsOf(picture, heater.id).map((row): Row => {
    const rpm = rpmText(picture.speeds.find(({ id }) => id === row.speed)?.speed, text);
    return { ...row, label: rpm };
  });
  if (rows.length === 0) return null;
  return (
    <section className="water-rows">
      <h2>{text.phrase('water.every-speed')}</h2>
      <p className="second water-key">
        <svg width="16" height="16" aria-hidden="true">
          <circle className="clean" cx="8" cy="8" r="6" />
        </svg>
        {text.phrase('water.filter-clean')}
        <svg width="16" height="16" aria-hidden="true">
          <circle className="dirty" cx="8" cy="8" r="6" />
        </svg>
        {text.phrase('water.filter-dirty')}
      </p>
      {picture.heaters.length > 1 && (
        <Choice
          name="water-heater"
          legend={text.phrase('water.which-heater')}
          value={heater.id}
          options={picture.heaters.map((one) => [one.id, partName(one, 'heaters', text)])}
          onChange={setAsked}
        />
      )}
      <Rows water={water} heater={heater} rows={rows} />
    </section>
  );
}

interface RowsProps {
  readonly water: Water;
  readonly heater: WaterHeaterShown;
  readonly rows: readonly Row[];
}

const ROW = 44;
const HEAD = 30;

function Rows({ water, heater, rows }: RowsProps) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const { picture, look } = water;
  const several = picture.basins.length > 1;
  const known = rows.flatMap(({ clean, dirty }) => [clean ?? 0, dirty ?? 0]);
  const scale = scaleTo(Math.max(heater.most ?? 0, heater.least ?? 0, ...known), 'volume-flow', { text });
  const [left, right] = width < 560 ? [92, 12] : [112, 130];
  const x = (si: number): number => left + scale.at(si) * (width - left - right);
  const foot = HEAD + rows.length * ROW;
  const band = { from: x(heater.least ?? 0), to: heater.most === undefined ? width - right : x(heater.most) };
  return (
    <div ref={frame} className="water-chart">
      <svg width={width} height={foot + 26} role="img" aria-label={rowsSpoken()}>
        <rect
          className="band"
          x={band.from}
          y={HEAD - 4}
          width={Math.max(0, band.to - band.from)}
          height={foot - HEAD + 4}
        />
        {heater.least !== undefined && (
          <Limit
            x={band.from}
            foot={foot}
            label={text.phrase('water.least', { flow: flowText(heater.least, text) })}
            end={band.from > left + 90}
          />
        )}
        {heater.most !== undefined && (
          <Limit
            x={band.to}
            foot={foot}
            label={text.phrase('water.most', { flow: flowText(heater.most, text) })}
            end
          />
        )}
        {rows.map((row, i) => {
          const y = HEAD + i * ROW + ROW / 2;
          const [clean, dirty] = [row.clean, row.dirty];
          return (
            <g
              key={row.id}
              className={row.speed === look.speed && row.basin === look.basin ? 'row chosen' : 'row'}
            >
              <path className="grid" d={`M${left} ${y}H${width - right}`} />
              <text x="0" y={several ? y - 3 : y + 5} className="start label">
                {row.label}
              </text>
              {several && (
                <text x="0" y={y + 15} className="start small">
                  {nameIn(picture.basins, row.basin, { kind: 'basins', text })}
                </text>
              )}
              {clean !== undefined && dirty !== undefined && (
                <path className="between" d={`M${x(dirty)} ${y}H${x(clean)}`} />
              )}
              {dirty !== undefined && <circle className="dirty" cx={x(dirty)} cy={y} r="7" />}
              {clean !== undefined && <circle className="clean" cx={x(clean)} cy={y} r="7" />}
              <text
                x={width < 560 ? Math.min(x(clean ?? dirty ?? 0) + 14, width - 96) : width - right + 12}
                y={width < 560 ? y - 10 : y + 5}
                className="start figure"
              >
                {spanText(row)}
              </text>
            </g>
          );
        })}
        <path className="axis" d={`M${left} ${foot}H${width - right}`} />
        {scale.ticks.map((tick) => {
          const at = left + shareOfTick(scale, tick, 'volume-flow') * (width - left - right);
          return (
            <g key={tick}>
              <path className="axis" d={`M${at} ${foot}v6`} />
              <text x={at} y={foot + 22} className="small">
                {bareText(tick, text)}
              </text>
            </g>
          );
        })}
      </svg>
    </div>
  );

  function spanText({ clean, dirty }: Row): string {
    if (clean === undefined) return dirty === undefined ? '?' : flowText(dirty, text);
    if (dirty === undefined) return flowText(clean, text);
    const low = flowText(dirty, text).replace(/\s*[^\d.,\s].*$/, '');
    return text.phrase('water.span', { low, high: flowText(clean, text) });
  }

  function rowsSpoken(): string {
    return rows.map((row) => `${row.label}: ${spanText(row)}`).join('; ');
  }
}

interface LimitProps {
  readonly x: number;
  readonly foot: number;
  readonly label: string;
  /** Its words end at the line; else they begin there. */
  readonly end: boolean;
}

function Limit({ x, foot, label, end }: LimitProps) {
  return (
    <g className="limit">
      <path d={`M${x} ${HEAD - 6}V${foot}`} />
      <text x={x} y={HEAD - 12} className={end ? 'small end' : 'small start'}>
        {label}
      </text>
    </g>
  );
}
