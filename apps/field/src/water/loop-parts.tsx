/** Basins, pump, filter and heaters of the loop, each with its figures in a place of its own. */
import type { HeaterInFlow, WaterHeaterShown, WaterPicture, WaterStateShown } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { widthOf } from '../ui/text-room.ts';
import { flowText, headText, lossText, riseText, rpmText, temperatureText } from './figures.ts';
import type { Box, LoopLayout } from './loop-layout.ts';
import { partName } from './names.ts';

export interface PartsProps {
  readonly picture: WaterPicture;
  readonly layout: LoopLayout;
  readonly state: WaterStateShown | undefined;
}

export function Basins({ picture, layout, state }: PartsProps) {
  const text = useText();
  const temperature = state?.flowing?.temperatures.basin;
  return layout.basins.map((box) => {
    const part = picture.basins.find(({ id }) => id === box.id);
    const open = state === undefined || state.basin === box.id;
    return (
      <g key={box.id} className={open ? 'water-basin' : 'water-basin aside'}>
        <path className="fill" d={surface(box)} />
        <path className="wall" d={`M${box.x} ${box.y}v${box.height}h${box.width}v${-box.height}`} />
        <text className="name" x={box.x + box.width / 2} y={box.y + box.height / 2 + 4}>
          {partName(part ?? { name: '' }, 'basins', text)}
        </text>
        {open && temperature !== undefined && (
          <text className="small" x={box.x + box.width / 2} y={box.y + box.height / 2 + 22}>
            {temperatureText(temperature, text)}
          </text>
        )}
      </g>
    );
  });
}

/** Water under a waved line. */
function surface({ x, y, width, height }: Box): string {
  const wave = width / 4;
  const top = y + 10;
  return `M${x} ${top}q${wave / 2} 7 ${wave} 0t${wave} 0t${wave} 0t${wave} 0V${y + height}H${x}Z`;
}

export function PumpAndFilter({ picture, layout, state }: PartsProps) {
  const text = useText();
  const { bottomY, pump, filter, narrow } = layout;
  const flowing = state?.flowing;
  const speed = picture.speeds.find(({ id }) => id === state?.speed)?.speed;
  const lost = flowing && flowing.pressures.filterInlet - flowing.pressures.filterOutlet;
  const foot = bottomY + Math.max(pump.radius, filter.height / 2) + 18;
  return (
    <g className="water-machines">
      <circle className={partClass(picture.pump.missing)} cx={pump.x} cy={bottomY} r={pump.radius} />
      {picture.pump.missing.length === 0 && (
        <path
          className="blade"
          d={`M${pump.x - pump.radius * 0.4} ${bottomY - pump.radius * 0.58}v${pump.radius * 1.16}l${pump.radius * 1.15} ${-pump.radius * 0.58}z`}
        />
      )}
      <text x={pump.x} y={bottomY - pump.radius - 10} className="figure">
        {flowing && `+${headText(flowing.pumpHead, text)}`}
      </text>
      <text x={pump.x} y={foot} className="small">
        {narrow ? text.phrase('water.pump') : `${text.phrase('water.pump')} ${rpmText(speed, text)}`}
      </text>
      <rect
        className={partClass(picture.filter.missing)}
        x={filter.x - filter.width / 2}
        y={bottomY - filter.height / 2}
        width={filter.width}
        height={filter.height}
        rx={filter.width * 0.38}
      />
      <path
        className={state?.filter === 'dirty' ? 'bed dirty' : 'bed'}
        d={`M${filter.x - filter.width / 2 + 4} ${bottomY}h${filter.width - 8}`}
      />
      <text x={filter.x} y={bottomY - filter.height / 2 - 10} className="figure">
        {lost !== undefined && lossText(lost, text)}
      </text>
      <text x={filter.x} y={foot} className="small">
        {text.phrase('water.filter')}
      </text>
    </g>
  );
}

function partClass(missing: readonly string[]): string {
  return missing.length > 0 ? 'body unknown' : 'body';
}

export function Heaters({ picture, layout, state }: PartsProps) {
  return layout.heaters.map((box) => (
    <Heater key={box.id} box={box} picture={picture} state={state} layout={layout} />
  ));
}

/** Middle lines of name, flow and rise, as shares of the box. */
const LINES = [0.27, 0.58, 0.87] as const;

function Heater({ box, picture, state }: PartsProps & { readonly box: Box }) {
  const text = useText();
  const heater = picture.heaters.find(({ id }) => id === box.id);
  const inFlow = state?.flowing?.heaters.find(({ id }) => id === box.id);
  const x = box.x + box.width / 2;
  const [first, second, third] = LINES.map((line) => box.y + box.height * line);
  const outside = inFlow !== undefined && heater !== undefined && isOutside(heater, inFlow.flow);
  const flow = inFlow === undefined ? '?' : flowText(inFlow.flow, text);
  // A long unit takes smaller letters.
  const isLarge = widthOf(flow, 21, 'bold') < box.width - 8;
  const plate = Math.min(box.width - 6, widthOf(flow, isLarge ? 21 : 15, 'bold') + 8);
  return (
    <g className="water-heater">
      <rect
        className={partClass(heater?.missing ?? [])}
        x={box.x}
        y={box.y}
        width={box.width}
        height={box.height}
        rx="4"
      />
      <text x={x} y={first} className="name">
        {partName(heater ?? { name: '' }, 'heaters', text)}
      </text>
      {outside && (
        <rect className="plate" x={x - plate / 2} y={(second ?? 0) - 18} width={plate} height="23" rx="4" />
      )}
      <text x={x} y={second} className={`${isLarge ? 'large' : 'figure'}${outside ? ' plated' : ''}`}>
        {flow}
      </text>
      <text x={x} y={third} className="small">
        {inFlow === undefined ? '' : warmed(inFlow)}
      </text>
    </g>
  );

  function warmed({ burns, rise }: HeaterInFlow): string {
    if (!burns) return text.phrase('water.off');
    return rise === undefined ? '' : riseText(rise, text);
  }
}

function isOutside({ least, most }: WaterHeaterShown, flow: number): boolean {
  return (least !== undefined && flow < least) || (most !== undefined && flow > most);
}
