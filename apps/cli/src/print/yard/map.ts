/** A yard as rows of signs, for a terminal: nothing is said by colour. */
import { place } from '@firstfire/engine';
import type { MappedYard } from '@firstfire/job';
import { GROUND, KINDS } from './kinds.ts';

/** Signs a row may have. */
const WIDEST = 76;
/** A sign is about twice as high as it is wide. */
const TALL = 2;
/** Less than this over what is asked is tight. */
const TIGHT = 0.1;

export interface SignMap {
  readonly rows: readonly string[];
  /** m that one sign stands for, across and down. */
  readonly width: number;
  readonly height: number;
  /** Signs that occur. */
  readonly signs: ReadonlySet<string>;
}

export function signMap(yard: MappedYard): SignMap {
  const { x, y, width, height } = place.boundsOf(yard.question.yard);
  const cell = Math.max(width / WIDEST, yard.map.step);
  const columns = Math.max(1, Math.round(width / cell));
  const rows = Math.max(1, Math.ceil(height / (TALL * cell) - 1e-9));
  const ground = groundSigns(yard, { x, y, cell, columns, rows });
  const lines = Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (_, column) => {
      const row = rows - 1 - down;
      const middle = { x: x + (column + 0.5) * cell, y: y + (row + 0.5) * TALL * cell };
      return signAt(yard, middle, cell) ?? ground[row * columns + column] ?? ' ';
    }).join(''),
  );
  const text = lines.map((line) => line.trimEnd());
  return { rows: text, width: cell, height: TALL * cell, signs: new Set(text.join('')) };
}

interface Cells {
  readonly x: number;
  readonly y: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
}

/** Of each cell the best spot whose middle lies in it; a blank outside the yard. */
function groundSigns(yard: MappedYard, { x, y, cell, columns, rows }: Cells): string[] {
  const { map, question } = yard;
  const signs = new Array<string>(columns * rows).fill(' ');
  const order = [' ', GROUND.barred.sign, GROUND.tight.sign, GROUND.free.sign];
  map.margins.forEach((margin, spot) => {
    const at = {
      x: map.x + (spot % map.columns) * map.step,
      y: map.y + Math.floor(spot / map.columns) * map.step,
    };
    if (Number.isNaN(margin) && !place.contains(question.yard, at)) return;
    const column = Math.min(columns - 1, Math.floor((at.x - x) / cell));
    const index = Math.min(rows - 1, Math.floor((at.y - y) / (TALL * cell))) * columns + column;
    const sign = markOf(margin);
    if (order.indexOf(sign) > order.indexOf(signs[index] ?? ' ')) signs[index] = sign;
  });
  return signs;
}

function markOf(margin: number): string {
  if (!(margin >= 0)) return GROUND.barred.sign;
  return margin < TIGHT ? GROUND.tight.sign : GROUND.free.sign;
}

/** What stands in a cell, a best spot before the heater and that before a thing. */
function signAt(
  { best, drawn, question }: MappedYard,
  middle: place.Point,
  cell: number,
): string | undefined {
  const box = { at: middle, turn: 0, width: cell, depth: TALL * cell, height: 1, base: 0 };
  const number = best.findIndex(({ at }) => {
    const [dx, dy] = [at.x - middle.x, at.y - middle.y];
    return Math.abs(dx) <= cell / 2 && Math.abs(dy) <= (TALL * cell) / 2;
  });
  if (number >= 0) return String((number + 1) % 10);
  const { heater } = question;
  if (drawn !== undefined) {
    const corners = place.footprint({ ...heater, at: drawn.at, turn: drawn.turn });
    if (meets(box, { corners, closed: true })) return GROUND.heater.sign;
  }
  const kinds = Object.keys(KINDS).toReversed();
  const kind = kinds.find((name) => question.drawn.some((one) => one.kind === name && meets(box, one)));
  return kind === undefined ? undefined : KINDS[kind]?.sign;
}

function meets(box: place.Placed, shape: place.Drawn): boolean {
  return place.planDistance(box, { ...shape, bottom: 0, top: 1, growth: 0 }) === 0;
}
