/**
 * A box with its middle at zero and its sides along the axes, and one straight part of a thing: the distance between
 * them, and how far out the part begins before each side. Plain numbers, for a grid asks for them a million times.
 *
 * The clearance of a side is measured as a tape is held: straight out from the side, over its width. A wall alongside
 * that runs on past a corner is no nearer to the front than it is before the front.
 */

/** Half the box, m. */
export interface HalfBox {
  readonly x: number;
  readonly y: number;
}

/** Distance before each side, m; infinite where nothing stands before it. */
export interface Before {
  left: number;
  right: number;
  back: number;
  front: number;
}

/** Square of the distance from the box to the part a–b; zero where they meet. */
export function boxDistanceSquared(half: HalfBox, ax: number, ay: number, bx: number, by: number): number {
  if (meetsBox(half, ax, ay, bx, by)) return 0;
  let least = Math.min(outsideSquared(half, ax, ay), outsideSquared(half, bx, by));
  for (let corner = 0; corner < 4; corner += 1) {
    const px = corner % 2 === 0 ? half.x : -half.x;
    const py = corner < 2 ? half.y : -half.y;
    least = Math.min(least, toPartSquared(px, py, ax, ay, bx, by));
  }
  return least;
}

function outsideSquared(half: HalfBox, x: number, y: number): number {
  const dx = Math.max(0, Math.abs(x) - half.x);
  const dy = Math.max(0, Math.abs(y) - half.y);
  return dx * dx + dy * dy;
}

function toPartSquared(px: number, py: number, ax: number, ay: number, bx: number, by: number): number {
  const dx = bx - ax;
  const dy = by - ay;
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((px - ax) * dx + (py - ay) * dy) / square;
  const share = along < 0 ? 0 : Math.min(along, 1);
  const ex = ax + share * dx - px;
  const ey = ay + share * dy - py;
  return ex * ex + ey * ey;
}

/** Whether the part a–b has a point in the box: both its spans over the axes' strips overlap. */
function meetsBox(half: HalfBox, ax: number, ay: number, bx: number, by: number): boolean {
  const dx = bx - ax;
  const dy = by - ay;
  let from = 0;
  let to = 1;
  if (dx === 0) {
    if (Math.abs(ax) > half.x) return false;
  } else {
    const s = (-half.x - ax) / dx;
    const t = (half.x - ax) / dx;
    from = Math.max(from, Math.min(s, t));
    to = Math.min(to, Math.max(s, t));
  }
  if (dy === 0) {
    if (Math.abs(ay) > half.y) return false;
  } else {
    const s = (-half.y - ay) / dy;
    const t = (half.y - ay) / dy;
    from = Math.max(from, Math.min(s, t));
    to = Math.min(to, Math.max(s, t));
  }
  return from <= to;
}

/** Brings the part a–b, grown outwards, into the least distances before the sides. */
export function addBefore(
  before: Before,
  half: HalfBox,
  part: { readonly ax: number; readonly ay: number; readonly bx: number; readonly by: number },
  growth: number,
): void {
  const { ax, ay, bx, by } = part;
  if (growth === 0) {
    addLine(before, half, ax, ay, bx, by);
    return;
  }
  addRound(before, half, ax, ay, growth);
  addRound(before, half, bx, by, growth);
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return;
  // What has grown is two lines beside the part and a round at each end.
  const nx = (-(by - ay) / length) * growth;
  const ny = ((bx - ax) / length) * growth;
  addLine(before, half, ax + nx, ay + ny, bx + nx, by + ny);
  addLine(before, half, ax - nx, ay - ny, bx - nx, by - ny);
}

function addLine(before: Before, half: HalfBox, ax: number, ay: number, bx: number, by: number): void {
  const out = strip(half.x, half.y, ax, ay, bx, by);
  if (out.above < before.back) before.back = out.above;
  if (out.below < before.front) before.front = out.below;
  const beside = strip(half.y, half.x, ay, ax, by, bx);
  if (beside.above < before.right) before.right = beside.above;
  if (beside.below < before.left) before.left = beside.below;
}

const OUT = { above: 0, below: 0 };

/** Of the line's piece within |s| ≤ width: how far beyond ±depth it begins, on either side. */
function strip(width: number, depth: number, as: number, at: number, bs: number, bt: number): typeof OUT {
  OUT.above = Number.POSITIVE_INFINITY;
  OUT.below = Number.POSITIVE_INFINITY;
  const ds = bs - as;
  let from = 0;
  let to = 1;
  if (ds === 0) {
    if (Math.abs(as) > width) return OUT;
  } else {
    const p = (-width - as) / ds;
    const q = (width - as) / ds;
    from = Math.max(0, Math.min(p, q));
    to = Math.min(1, Math.max(p, q));
    if (from > to) return OUT;
  }
  const low = Math.min(at + from * (bt - at), at + to * (bt - at));
  const high = Math.max(at + from * (bt - at), at + to * (bt - at));
  if (high >= depth) OUT.above = Math.max(0, low - depth);
  if (low <= -depth) OUT.below = Math.max(0, -depth - high);
  return OUT;
}

function addRound(before: Before, half: HalfBox, x: number, y: number, radius: number): void {
  const overX = Math.max(0, Math.abs(x) - half.x);
  if (overX <= radius) {
    const reach = Math.sqrt(radius * radius - overX * overX);
    if (y + reach >= half.y) before.back = Math.min(before.back, Math.max(0, y - reach - half.y));
    if (y - reach <= -half.y) before.front = Math.min(before.front, Math.max(0, -half.y - y - reach));
  }
  const overY = Math.max(0, Math.abs(y) - half.y);
  if (overY <= radius) {
    const reach = Math.sqrt(radius * radius - overY * overY);
    if (x + reach >= half.x) before.right = Math.min(before.right, Math.max(0, x - reach - half.x));
    if (x - reach <= -half.x) before.left = Math.min(before.left, Math.max(0, -half.x - x - reach));
  }
}
