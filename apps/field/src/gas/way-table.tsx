/** The sections under the staircase: size, length and loss, each a button as tall as the picture over it. */
import type { GasHeaterSeen, GasPicture } from '@firstfire/job';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { apart, widthOf } from '../ui/text-room.ts';
import { lengthText, loss, pressureUnit, sizeText } from './figures.ts';
import { heaterName, nodeLabel, nodeName } from './names.ts';
import type { Stair } from './stair.ts';
import type { StaircaseProps } from './staircase.tsx';

type TableProps = StaircaseProps & { readonly stair: Stair; readonly height: number; readonly em: number };

export function WayTable({ picture, heater, state, part, onTake, stair, height, em }: TableProps) {
  const text = useText();
  const { view } = useMoment();
  const unit = pressureUnit(stair.scale?.high ?? 0, text);
  const narrowest = Math.min(...stair.columns.map(({ x0, x1 }) => x1 - x0)) / em;
  const fit = narrowest < 47 ? ' smallest' : narrowest < 56 ? ' small' : '';
  return (
    // biome-ignore lint/a11y/useSemanticElements: a row of buttons, named as one
    <div
      role="group"
      aria-label={text.phrase('gas.way')}
      className={`gas-way${fit}`}
      style={{
        marginLeft: stair.plot.left,
        gridTemplateColumns: stair.columns.map(({ x0, x1 }) => `${x1 - x0}px`).join(' '),
      }}
    >
      {stair.columns.map(({ leg: { link, end } }) => {
        const isTaken = part?.type === 'section' && part.id === link.id;
        const lost = link.drop[state];
        const isDearest = link.id === heater.dearest && state !== 'all-off';
        return (
          <button
            key={link.id}
            type="button"
            className="gas-stretch"
            aria-pressed={isTaken}
            onClick={() => onTake(isTaken ? undefined : { type: 'section', id: link.id })}
            style={{ '--gas-plot': `${height}px` } as React.CSSProperties}
          >
            <span className="sr">{link.name || nodeLabel(end, text, picture.metered)}, </span>
            <b>{fit === ' smallest' ? sizeText(link.size).replace('″', '') : sizeText(link.size)}</b>{' '}
            <span>{lengthText(link, view, text)}</span>{' '}
            <span className={isDearest ? 'gas-lost dearest' : 'gas-lost'}>
              {lost === undefined ? '?' : loss(lost, unit, text)}
            </span>
          </button>
        );
      })}
    </div>
  );
}

/** A name of a dozen letters. */
const ROOM_FOR_NAME = 100;

interface NamesProps {
  readonly em: number;
  readonly picture: GasPicture;
  readonly heater: GasHeaterSeen;
  readonly stair: Stair;
}

/** Junctions under their corners, in two rows where one is too narrow. The list beside the picture says them in full. */
export function WayNames({ picture, heater, stair, em }: NamesProps) {
  const text = useText();
  const { columns, plot } = stair;
  const ends = columns.map(({ leg, x1 }, i) => ({
    x: x1,
    name: i === columns.length - 1 ? heaterName(heater, text) : nodeName(leg.end, text, picture.metered),
  }));
  const all = [{ x: plot.left, name: nodeName(picture.root, text, picture.metered) }, ...ends].filter(
    ({ name }) => name !== '',
  );
  const rows = all.some(({ x }, i) => i > 0 && x - (all[i - 1]?.x ?? x) < ROOM_FOR_NAME * em) ? 2 : 1;
  return (
    <div className={rows === 2 ? 'gas-names two' : 'gas-names'} aria-hidden="true">
      {slotsOf(all, { rows, plot, em }).map(({ name, x, ...style }, i) => (
        <span key={`${x} ${name}`} className={i % rows === 1 ? 'second-row' : ''} style={style}>
          {name}
        </span>
      ))}
    </div>
  );
}

interface Corner {
  readonly x: number;
  readonly name: string;
}

interface Slots {
  readonly rows: number;
  readonly plot: Stair['plot'];
  readonly em: number;
}

/** Under their corners, moved aside where another of the same row is in the way; those at the ends lean on the edge. */
function slotsOf(all: readonly Corner[], { rows, plot, em }: Slots) {
  const width = plot.right + 20;
  const places = new Map<Corner, { readonly left: number; readonly width: number }>();
  for (let row = 0; row < rows; row += 1) {
    const own = all.filter((_, i) => i % rows === row);
    const share = width / own.length - GAP;
    const rooms = own.map(({ name }) => roomOf(name, em));
    const fits = rooms.reduce((sum, one) => sum + one + GAP, 0) <= width;
    const wanted = own.map(({ x }, i) => {
      const room = fits ? (rooms[i] ?? 0) : Math.min(rooms[i] ?? 0, share);
      return { left: x - room / 2, width: room };
    });
    const lefts = apart(wanted, { gap: GAP, width });
    for (const [i, corner] of own.entries())
      places.set(corner, { left: lefts[i] ?? 0, width: wanted[i]?.width ?? 0 });
  }
  return all.map((corner) => ({ ...corner, ...(places.get(corner) ?? { left: 0, width: 0 }) }));
}

const GAP = 6;
const LETTERS = 14.5;

function roomOf(name: string, em: number): number {
  return widthOf(name, LETTERS * em) + 4;
}
