/** Heater flow at every speed, filter clean and due, between the least and the greatest the heater bears. */
import type { WaterHeaterShown } from '@firstfire/job';
import { useRef } from 'react';
import { useText } from '../text/use-text.tsx';
import { apart, widthOf } from '../ui/text-room.ts';
import { flowText, scaleTo } from './figures.ts';
import { type SpeedRow, spanText, speedRows } from './flow-row.ts';
import { partName } from './names.ts';
import { Choice } from './state-choice.tsx';
import { Ticks } from './ticks.tsx';
import type { Water } from './use-water.ts';
import { useWidth } from './use-width.ts';

export function FlowRows({ water }: { readonly water: Water }) {
  const text = useText();
  const { picture, look, change } = water;
  const heater = picture.heaters.find(({ id }) => id === look.heater);
  const rows =
    heater === undefined ? [] : speedRows(picture, { heater: heater.id, figure: ({ flow }) => flow }, text);
  if (heater === undefined || rows.length === 0) return null;
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
          onChange={(id) => change({ heater: id })}
        />
      )}
      <Rows water={water} heater={heater} rows={rows} />
    </section>
  );
}

interface RowsProps {
  readonly water: Water;
  readonly heater: WaterHeaterShown;
  readonly rows: readonly SpeedRow[];
}

const HEAD = 30;

/** On a phone a row's words stand over its track, on a desk beside it. */
const PHONE = { row: 54, track: 38, left: 4, right: 4 };
const DESK = { row: 40, track: 20, left: 150, right: 130 };
const DESK_FROM = 560;

function Rows({ water, heater, rows }: RowsProps) {
  const text = useText();
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const narrow = width < DESK_FROM;
  const { row: high, track, left, right } = narrow ? PHONE : DESK;
  const flows = rows.flatMap(({ clean, dirty }) => [clean ?? 0, dirty ?? 0]);
  const most = Math.max(heater.most ?? 0, heater.least ?? 0, ...flows);
  const scale = scaleTo(most, 'volume-flow', { text });
  const x = (si: number): number => left + scale.at(si) * (width - left - right);
  const foot = HEAD + rows.length * high;
  const band = { from: x(heater.least ?? 0), to: heater.most === undefined ? width - right : x(heater.most) };
  const spoken = rows.map((row) => `${row.label}: ${spanText(row, text)}`).join('; ');
  return (
    <div ref={frame} className="picture-chart water-chart">
      <svg width={width} height={foot + 28} role="img" aria-label={spoken}>
        <Limits heater={heater} band={band} width={width} />
        {rows.map((row, i) => {
          const top = HEAD + i * high;
          const y = top + track;
          const chosen = row.speed === water.look.speed && row.basin === water.look.basin;
          return (
            <g key={row.id} className={chosen ? 'row chosen' : 'row'}>
              <rect
                className="band"
                x={band.from}
                y={y - 14}
                width={Math.max(0, band.to - band.from)}
                height="28"
              />
              <path className="grid" d={`M${left} ${y}H${width - right}`} />
              {heater.least !== undefined && <path className="stop" d={`M${band.from} ${y - 14}v28`} />}
              {heater.most !== undefined && <path className="stop" d={`M${band.to} ${y - 14}v28`} />}
              <text x="0" y={narrow ? top + 16 : y + 5} className="start label">
                {row.label}
              </text>
              <text x={width} y={narrow ? top + 16 : y + 5} className="end figure">
                {spanText(row, text)}
              </text>
              <Dots row={row} x={x} y={y} />
            </g>
          );
        })}
        <Ticks scale={scale} kind="volume-flow" {...{ left, foot, right: width - right }} />
      </svg>
    </div>
  );
}

interface DotsProps {
  readonly row: Pick<SpeedRow, 'clean' | 'dirty'>;
  readonly x: (si: number) => number;
  readonly y: number;
}

export function Dots({ row: { clean, dirty }, x, y }: DotsProps) {
  return (
    <>
      {clean !== undefined && dirty !== undefined && (
        <path className="between" d={`M${x(dirty)} ${y}H${x(clean)}`} />
      )}
      {dirty !== undefined && <circle className="dirty" cx={x(dirty)} cy={y} r="7" />}
      {clean !== undefined && <circle className="clean" cx={x(clean)} cy={y} r="7" />}
    </>
  );
}

interface LimitsProps {
  readonly heater: WaterHeaterShown;
  readonly band: { readonly from: number; readonly to: number };
  readonly width: number;
}

const SMALL = 14;

/** Each ends where its limit stands, or begins there; moved where the other is in its way. */
function Limits({ heater: { least, most }, band, width }: LimitsProps) {
  const text = useText();
  const low = least === undefined ? '' : text.phrase('water.least', { flow: flowText(least, text) });
  const high = most === undefined ? '' : text.phrase('water.most', { flow: flowText(most, text) });
  const [first, second] = [widthOf(low, SMALL), widthOf(high, SMALL)];
  const [from = 0, to = 0] = apart(
    [
      { left: band.from > first ? band.from + 3 - first : band.from + 3, width: first },
      { left: band.to - second, width: second },
    ],
    { gap: 8, width },
  );
  return (
    <>
      <text x={from} y={HEAD - 12} className="small start">
        {low}
      </text>
      <text x={to} y={HEAD - 12} className="small start">
        {high}
      </text>
    </>
  );
}
