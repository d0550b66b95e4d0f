/**
 * Where the parts of the loop stand, for a width in pixels. Fixed places for every label: no two can meet.
 *
 *     returns ─ basins ─ suctions ─ pump ─ filter ─┐          The return runs along the top to the left, the way to
 *     along the left          along the foot       │          the pump along the foot to the right; heaters stand
 *     └──── return ──┬── heaters ──────────────────┤          between riser and return, the bypass below them.
 *                    └── bypass ───────────────────┘
 */
import type { WaterPicture } from '@firstfire/job';

export interface Box {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface LoopLayout {
  readonly width: number;
  readonly height: number;
  readonly narrow: boolean;
  /** The first stands lowest. */
  readonly basins: readonly Box[];
  /** The first stands lowest, next to the split. */
  readonly heaters: readonly Box[];
  readonly returnX: number;
  readonly suctionX: number;
  readonly riserX: number;
  /** Header behind the heaters, and where the bypass joins. */
  readonly headerX: number;
  readonly mergeX: number;
  /** Rows of the return and of the way to the pump. */
  readonly topY: number;
  readonly bottomY: number;
  readonly bypassY: number;
  readonly valveX: number;
  /** Length of the valve's handle, and radius of its arc. */
  readonly arm: number;
  readonly arc: number;
  readonly pump: { readonly x: number; readonly radius: number };
  readonly filter: { readonly x: number; readonly width: number; readonly height: number };
  /** Widest pipe. */
  readonly pipe: number;
}

/** Pump and filter stand at shares of the way from the suction to the riser. */
const NARROW = {
  margin: 12,
  heater: { width: 122, one: 84, more: 70, gap: 10 },
  basin: { x: 30, width: 86, height: 60, gap: 18 },
  top: 60,
  arm: 50,
  arc: 68,
  below: 44,
  foot: 146,
  pump: { at: 0.19, radius: 22 },
  filter: { at: 0.57, width: 38, height: 52 },
  pipe: 14,
};

const WIDE: typeof NARROW = {
  margin: 22,
  heater: { width: 168, one: 96, more: 72, gap: 12 },
  basin: { x: 44, width: 150, height: 92, gap: 22 },
  top: 62,
  arm: 58,
  arc: 80,
  below: 52,
  foot: 160,
  pump: { at: 0.23, radius: 30 },
  filter: { at: 0.47, width: 50, height: 66 },
  pipe: 20,
};

const WIDE_FROM = 560;

type Shape = Pick<WaterPicture, 'basins' | 'heaters' | 'arrangement' | 'bypass'>;

export function layLoop({ basins, heaters, arrangement, bypass }: Shape, width: number): LoopLayout {
  const narrow = width < WIDE_FROM;
  const size = narrow ? fitted(width) : WIDE;
  const riserX = width - size.margin;
  const suctionX = size.basin.x + size.basin.width + 14;
  const span = riserX - suctionX;
  const count = heaters.length;
  const high = count > 1 ? size.heater.more : size.heater.one;
  const boxX = riserX - (narrow ? 14 : 40) - size.heater.width;
  const headerX = count > 1 ? boxX - (narrow ? 14 : 30) : boxX;
  const first = size.top - high / 2;
  const heaterBoxes = heaters.map(({ id }, i): Box => {
    const y = first + (count - 1 - i) * (high + size.heater.gap);
    return { id, x: boxX, y, width: size.heater.width, height: high };
  });
  const stack = first + Math.max(count, 1) * (high + size.heater.gap) - size.heater.gap;
  const row = arrangement === 'reverse' ? heaterBoxes.at(-1) : heaterBoxes[0];
  const topY = row === undefined ? size.top : row.y + high / 2;
  const withBypass = bypass.kind !== 'none' && count > 0;
  const bypassY = stack + size.below;
  const bottomY = withBypass
    ? bypassY + size.foot
    : Math.max(stack + 110, basinsNeed(basins.length, size, topY));
  const basinBoxes = basins.map(({ id }, i): Box => {
    const y = bottomY - size.basin.height / 2 - i * (size.basin.height + size.basin.gap);
    return { id, x: size.basin.x, y, width: size.basin.width, height: size.basin.height };
  });
  return {
    width,
    height: bottomY + Math.max(size.basin.height / 2 + 8, size.pump.radius + 36),
    narrow,
    basins: basinBoxes,
    heaters: heaterBoxes,
    returnX: size.basin.x - 20,
    suctionX,
    riserX,
    headerX,
    mergeX: headerX - (narrow ? 30 : 60),
    topY,
    bottomY,
    bypassY,
    valveX: riserX - size.arc - (narrow ? 18 : 60),
    arm: size.arm,
    arc: size.arc,
    pump: { x: suctionX + Math.max(size.pump.radius + 5, span * size.pump.at), radius: size.pump.radius },
    filter: { x: suctionX + span * size.filter.at, width: size.filter.width, height: size.filter.height },
    pipe: size.pipe,
  };
}

/** On the smallest phones heaters and basins give way to the words between them. */
function fitted(width: number): typeof NARROW {
  const { heater, basin } = NARROW;
  return {
    ...NARROW,
    heater: { ...heater, width: Math.min(heater.width, width * 0.36) },
    basin: { ...basin, width: Math.min(basin.width, width * 0.25) },
  };
}

/** Room for all basins under the return. */
function basinsNeed(count: number, { basin }: typeof NARROW, topY: number): number {
  return topY + 40 + count * (basin.height + basin.gap) - basin.height / 2;
}
