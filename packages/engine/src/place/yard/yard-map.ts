/**
 * Every spot of a yard where a heater may stand, scored by its smallest margin: distance over what is asked, less 1.
 *
 * All spots of a grid are tried at every turn asked for. Spots are taken in blocks: for a block the parts of the yard
 * are put in the order of the least margin each could leave anywhere in it, so that a spot looks only at the few that
 * can decide it. Nothing is rounded off: a spot's margin is that of `clearances` and `thingDistance` there.
 *
 * Range: see `yardQuestion`; up to a million spots, 16 turns. Errors: coded issues of the yard, its things and the box.
 * Source: plane geometry. Worked example: an empty yard of 4 m square, its line to be 1 m away, a heater 1 m square: the
 * middle spots are 1.5 m from the line, margin 0.5.
 */
import { ok, type Result } from '../../trace/index.ts';
import type { Point } from '../plane/index.ts';
import { type Grid, gridOf, groundOf, spotsWithin } from './ground.ts';
import { type Part, partsAt } from './parts.ts';
import { type YardQuestion, yardQuestion } from './question.ts';
import { type Scan, spotMargin } from './spot-margin.ts';

export interface YardMap extends Grid {
  /** By row from the bottom of the plan, then by column: the margin at the best turn; NaN where no heater can stand. */
  readonly margins: Float64Array;
  /** Which of the turns asked for is best there. */
  readonly turns: Uint8Array;
  /** Spots tried: those whose middle lies within the yard. */
  readonly tried: number;
  /** The best spot, where there is one. */
  readonly best?: { readonly at: Point; readonly turn: number; readonly margin: number };
}

/** A margin beyond which no spot is better than another: eleven times what is asked. */
const FREE = 10;
/** Stands for a part that the heater could touch: below any margin, so that it is always looked at. */
const WITHIN = -2;
/** Spots along a block's side. */
const BLOCK = 6;

/** The map of a yard. */
export function yardMap(asked: YardQuestion): Result<YardMap> {
  const fit = yardQuestion(asked);
  if (!fit.ok) return fit;
  const grid = gridOf(asked);
  const ground = groundOf(asked, grid);
  const margins = new Float64Array(ground.length).fill(Number.NaN);
  const turns = new Uint8Array(ground.length);
  asked.turns.forEach((turn, index) => {
    scanTurn({ asked, grid, ground, margins, turns }, turn, index);
  });
  const tried = spotsWithin(asked.yard, grid);
  return ok({ ...grid, margins, turns, tried, ...bestOf(asked, grid, { margins, turns }) });
}

interface Sheet {
  readonly asked: YardQuestion;
  readonly grid: Grid;
  readonly ground: Float64Array;
  readonly margins: Float64Array;
  readonly turns: Uint8Array;
}

function scanTurn(sheet: Sheet, turn: number, index: number): void {
  const { asked, grid } = sheet;
  const half = { x: asked.heater.width / 2, y: asked.heater.depth / 2 };
  const scan: Scan = { half, faces: asked.faces };
  const parts = [...partsAt(asked, turn), ...yardEdges(asked, turn)];
  for (let row = 0; row < grid.rows; row += BLOCK) {
    for (let column = 0; column < grid.columns; column += BLOCK) {
      scanBlock(sheet, { scan, parts, turn, index, row, column });
    }
  }
}

/** The edge of the yard asks nothing but that the heater does not stand across it. */
function yardEdges(asked: YardQuestion, turn: number): readonly Part[] {
  const edge = { corners: asked.yard, closed: true, bottom: 0, top: 0, growth: 0, least: 0, solid: false };
  return partsAt({ ...asked, things: [edge] }, turn).map((part) => ({ ...part, solid: true }));
}

interface Block {
  readonly scan: Scan;
  readonly parts: readonly Part[];
  readonly turn: number;
  readonly index: number;
  readonly row: number;
  readonly column: number;
}

function scanBlock(sheet: Sheet, block: Block): void {
  const { grid, ground, margins, turns } = sheet;
  const lastRow = Math.min(grid.rows, block.row + BLOCK);
  const lastColumn = Math.min(grid.columns, block.column + BLOCK);
  const cos = Math.cos(block.turn);
  const sin = Math.sin(block.turn);
  let near: ReturnType<typeof nearParts> | undefined;
  for (let row = block.row; row < lastRow; row += 1) {
    for (let column = block.column; column < lastColumn; column += 1) {
      const spot = row * grid.columns + column;
      const open = ground[spot] ?? Number.NaN;
      if (Number.isNaN(open)) continue;
      near ??= nearParts(sheet, block);
      const px = grid.x + column * grid.step;
      const py = grid.y + row * grid.step;
      const held = margins[spot] ?? Number.NaN;
      const floor = Number.isNaN(held) ? Number.NEGATIVE_INFINITY : held;
      const at = { x: px * cos + py * sin, y: py * cos - px * sin, most: Math.min(open, FREE), floor };
      const margin = spotMargin(block.scan, at, near);
      if (margin > floor) {
        margins[spot] = margin;
        turns[spot] = block.index;
      }
    }
  }
}

/** The parts in the order of the least margin each could leave in the block. */
function nearParts({ grid }: Sheet, { scan, parts, turn, row, column }: Block) {
  const middle = ((BLOCK - 1) / 2) * grid.step;
  const px = grid.x + column * grid.step + middle;
  const py = grid.y + row * grid.step + middle;
  const x = px * Math.cos(turn) + py * Math.sin(turn);
  const y = py * Math.cos(turn) - px * Math.sin(turn);
  const around = Math.SQRT2 * middle + Math.hypot(scan.half.x, scan.half.y);
  const bound = parts.map((part) => {
    const away = distanceTo(part, x, y) - part.growth - around;
    return away <= 0 ? WITHIN : away / part.reach - 1;
  });
  const order = bound
    .map((_, i) => i)
    .filter((i) => (bound[i] ?? 0) < FREE)
    .sort((i, j) => (bound[i] ?? 0) - (bound[j] ?? 0));
  return {
    parts: order.map((i) => parts[i]!),
    bounds: Float64Array.from(order, (i) => bound[i] ?? 0),
  };
}

function distanceTo({ ax, ay, bx, by }: Part, x: number, y: number): number {
  const dx = bx - ax;
  const dy = by - ay;
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / square));
  return Math.hypot(ax + share * dx - x, ay + share * dy - y);
}

function bestOf(asked: YardQuestion, grid: Grid, { margins, turns }: Pick<YardMap, 'margins' | 'turns'>) {
  let best = -1;
  margins.forEach((margin, spot) => {
    if (margin > (margins[best] ?? Number.NEGATIVE_INFINITY)) best = spot;
  });
  if (best < 0) return {};
  const at = {
    x: grid.x + (best % grid.columns) * grid.step,
    y: grid.y + Math.floor(best / grid.columns) * grid.step,
  };
  return { best: { at, turn: asked.turns[turns[best] ?? 0] ?? 0, margin: margins[best] ?? Number.NaN } };
}
