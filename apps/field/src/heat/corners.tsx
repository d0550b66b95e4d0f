/** A basin drawn by its corners: each moved by finger or arrows, put in between two others, taken away, or typed. */
import type { HeatBasinShown } from '@firstfire/job';
import { type KeyboardEvent, type RefObject, useRef, useState } from 'react';
import { Link } from 'wouter';
import { useSession } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { useWidth } from '../water/use-width.ts';
import { numberText } from './figures.ts';
import { outlineOf } from './outline.ts';
import { type Corner, type CornerMover, useCorners } from './use-corners.ts';

const HEIGHT = 250;
const EDGE = 34;

interface PartProps {
  readonly basin: HeatBasinShown;
}

/** To begin with, m. */
const FIRST: readonly Corner[] = [
  [0, 0],
  [9, 0],
  [9, 4.5],
  [0, 4.5],
];

export function Corners({ basin }: PartProps) {
  const text = useText();
  const { doc } = useSession();
  const mover = useCorners(basin);
  const [held, hold] = useState(0);
  const { corners } = basin.shape;
  const byNumber = `/jobs/${doc}/read/basins/${basin.id}/corners`;
  return (
    <div className="heat-corners">
      {corners.length < 2 ? (
        <button type="button" className="button main" onClick={() => mover.write(FIRST)}>
          {text.phrase('heat.first-corners')}
        </button>
      ) : (
        <>
          <p className="second">{text.phrase('heat.corners-say')}</p>
          <Drawing basin={basin} mover={mover} held={Math.min(held, corners.length - 1)} hold={hold} />
          <CornerRow basin={basin} mover={mover} held={Math.min(held, corners.length - 1)} />
        </>
      )}
      <Link className="button plain" href={byNumber}>
        {text.phrase('heat.by-number')}
      </Link>
    </div>
  );
}

interface HeldProps extends PartProps {
  readonly mover: CornerMover;
  readonly held: number;
}

interface DrawingProps extends HeldProps {
  readonly hold: (corner: number) => void;
}

interface View {
  readonly scale: number;
  readonly left: number;
  readonly foot: number;
  readonly from: Corner;
}

function Drawing({ basin, mover, held, hold }: DrawingProps) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const kept = useRef<View>(undefined);
  const { corners } = basin.shape;
  const outline = outlineOf(basin.shape);
  const scale = Math.min((width - 2 * EDGE) / outline.wide, (HEIGHT - 2 * EDGE) / outline.high);
  const left = (width - outline.wide * scale) / 2;
  // Under the finger the scale stands still.
  if (!mover.busy || kept.current === undefined)
    kept.current = { scale, left, foot: HEIGHT - (HEIGHT - outline.high * scale) / 2, from: outline.from };
  const view = kept.current;
  const at = ([x, y]: Corner): Corner => [
    view.left + (x - view.from[0]) * view.scale,
    view.foot - (y - view.from[1]) * view.scale,
  ];
  const drawn = corners.map(at);
  return (
    <div ref={frame} className="heat-plan" style={{ height: HEIGHT }}>
      <svg width={width} height={HEIGHT} aria-hidden="true">
        <path className="outline" d={`M${drawn.map((one) => one.join(' ')).join('L')}Z`} />
      </svg>
      {drawn.map((one, i) => (
        <Between
          key={`between ${one.join(' ')}`}
          {...{ corners, mover, hold }}
          after={i}
          ends={[one, drawn[(i + 1) % drawn.length] ?? one]}
        />
      ))}
      {drawn.map((one, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a corner is its place
        <Grip key={i} {...{ corners, mover, hold, view, frame }} number={i} place={one} isHeld={i === held} />
      ))}
    </div>
  );
}

interface BetweenProps {
  readonly corners: readonly Corner[];
  readonly mover: CornerMover;
  readonly hold: (corner: number) => void;
  readonly after: number;
  readonly ends: readonly [Corner, Corner];
}

/** Under this many pixels two corners stand too close for a third to be put between them by hand. */
const ROOM = 96;

function Between({ corners, mover, hold, after, ends: [a, b] }: BetweenProps) {
  const text = useText();
  if (Math.hypot(a[0] - b[0], a[1] - b[1]) < ROOM) return null;
  const put = (): void => {
    const [from = [0, 0], to = [0, 0]] = [corners[after], corners[(after + 1) % corners.length]] as Corner[];
    const middle: Corner = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    mover.write([...corners.slice(0, after + 1), middle, ...corners.slice(after + 1)]);
    hold(after + 1);
  };
  return (
    <button
      type="button"
      className="heat-between"
      style={{ left: (a[0] + b[0]) / 2, top: (a[1] + b[1]) / 2 }}
      aria-label={text.phrase('heat.corner-add', { number: after + 1 })}
      onClick={put}
    >
      +
    </button>
  );
}

interface GripProps {
  readonly corners: readonly Corner[];
  readonly mover: CornerMover;
  readonly hold: (corner: number) => void;
  readonly view: View;
  readonly frame: RefObject<HTMLDivElement | null>;
  readonly number: number;
  readonly place: Corner;
  readonly isHeld: boolean;
}

function Grip({ corners, mover, hold, view, frame, number, place, isHeld }: GripProps) {
  const text = useText();
  const { coarse } = mover.steps;
  const toward = (x: number, y: number): void => {
    const to: Corner = [Math.round(x / coarse) * coarse, Math.round(y / coarse) * coarse];
    mover.show(corners.map((one, i) => (i === number ? to : one)));
  };
  return (
    <button
      type="button"
      className={isHeld ? 'heat-corner held' : 'heat-corner'}
      style={{ left: place[0], top: place[1] }}
      aria-label={cornerText(corners[number], number, { mover, text })}
      aria-pressed={isHeld}
      onFocus={() => hold(number)}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        hold(number);
        mover.begin();
      }}
      onPointerMove={(event) => {
        const box = frame.current?.getBoundingClientRect();
        if (!event.currentTarget.hasPointerCapture(event.pointerId) || box === undefined) return;
        toward(
          view.from[0] + (event.clientX - box.x - view.left) / view.scale,
          view.from[1] + (view.foot - (event.clientY - box.y)) / view.scale,
        );
      }}
      onPointerUp={() => mover.end(true)}
      onPointerCancel={() => mover.end(false)}
      onKeyDown={(event) => moveByKey(event, { mover, corners, number })}
    >
      {number + 1}
    </button>
  );
}

interface Told {
  readonly mover: CornerMover;
  readonly text: ReturnType<typeof useText>;
}

function cornerText(corner: Corner = [0, 0], number: number, { mover, text }: Told): string {
  const of = (si: number): string => text.quantity(si, { unit: mover.steps.unit, kind: 'length' });
  return text.phrase('heat.corner', { number: number + 1, x: of(corner[0]), y: of(corner[1]) });
}

const WAYS: Readonly<Record<string, Corner>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

interface Moved {
  readonly mover: CornerMover;
  readonly corners: readonly Corner[];
  readonly number: number;
}

function moveByKey(event: KeyboardEvent, { mover, corners, number }: Moved): void {
  if (event.key === 'Escape') mover.end(false);
  const way = WAYS[event.key];
  if (way === undefined) return;
  event.preventDefault();
  step({ mover, corners, number }, way, event.shiftKey ? mover.steps.large : mover.steps.fine);
}

function step({ mover, corners, number }: Moved, [dx, dy]: Corner, by: number): void {
  mover.write(corners.map(([x, y], i) => (i === number ? [x + dx * by, y + dy * by] : [x, y])));
}

const ARROWS: readonly (readonly [string, string])[] = [
  ['ArrowLeft', '◂'],
  ['ArrowRight', '▸'],
  ['ArrowUp', '▴'],
  ['ArrowDown', '▾'],
];

/** The corner in hand: where it stands, four arrows, and taking it away. */
function CornerRow({ basin, mover, held }: HeldProps) {
  const text = useText();
  const { corners } = basin.shape;
  return (
    <fieldset className="heat-turn heat-corner-row">
      <legend>{cornerText(corners[held], held, { mover, text })}</legend>
      {ARROWS.map(([key, sign]) => (
        <button
          key={key}
          type="button"
          className="button"
          aria-label={text.phrase('heat.corner-move', { number: numberText(held + 1, text), way: sign })}
          onClick={() => step({ mover, corners, number: held }, WAYS[key] ?? [0, 0], mover.steps.coarse)}
        >
          {sign}
        </button>
      ))}
      <button
        type="button"
        className="button plain"
        disabled={corners.length <= 3}
        aria-label={text.phrase('heat.corner-remove', { number: held + 1 })}
        onClick={() => mover.write(corners.filter((_, i) => i !== held))}
      >
        ×
      </button>
    </fieldset>
  );
}
