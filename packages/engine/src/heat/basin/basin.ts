/**
 * A basin from its measures: area, perimeter, volume, and the wall and floor the water touches.
 *
 *     A = ∫w dx    V = ∫w·d dx    A_wall = ∮d ds    A_floor = Σ ∫w dx·√(1 + slope²)    mean depth = V/A
 *
 * Exact for straight outlines and for volumes of all (see `integrals`); the kidney is the trade's (see `outline`).
 * Rounded coves, steps and benches are left out: they take 1 to 5 % of the water of a house pool (*common practice,
 * no source*).
 *
 * Source: plane and solid geometry.
 * Range: lengths 10 mm to 500 m, depths 10 mm to 30 m, polygons of 3 to 500 corners.
 * Errors: every length out of range; an outline that crosses itself; depths out of order or beyond the length; a
 * hopper larger than the basin.
 *
 * Worked example: 32 ft × 16 ft rectangle sloping from 3 ft to 8 ft → 512 ft2, 2816 ft3 (21,065 gal), 96 ft round.
 */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import { type Floor, type FloorPiece, floorPieces } from './floor.ts';
import { type Hopper, hopperAddition, hopperIssues } from './hopper.ts';
import { moments, wallOn, widthAt } from './integrals.ts';
import { planOutline } from './outline.ts';
import type { Outline, Plan } from './plan.ts';

export interface Basin {
  readonly plan: Plan;
  readonly floor: Floor;
  readonly hopper?: Hopper;
}

export interface BasinGeometry {
  /** Water surface, m2. */
  readonly area: number;
  /** m. */
  readonly perimeter: number;
  /** Overall length, m. */
  readonly length: number;
  /** m3. */
  readonly volume: number;
  /** Volume over area, m. */
  readonly meanDepth: number;
  /** Upright wall under water, m2. */
  readonly wallArea: number;
  /** Floor, slopes at their true size, steps and hopper included, m2. */
  readonly floorArea: number;
  /** Wall and floor, m2. */
  readonly wettedArea: number;
}

/** The geometry of a basin, or everything that is wrong with its measures. */
export function basinGeometry(basin: Basin): Result<BasinGeometry> {
  const outline = planOutline(basin.plan);
  const pitIssues = basin.hopper ? hopperIssues(basin.hopper) : [];
  if (!outline.ok) return fail(...outline.issues, ...pitIssues);
  const floor = floorPieces(basin.floor, outline.value.length);
  if (!floor.ok) return fail(...floor.issues, ...pitIssues);
  if (pitIssues.length > 0) return fail(...pitIssues);
  const plain = measure(outline.value, floor.value);
  if (!(plain.area > 0)) return fail({ code: 'ill-formed', where: 'plan', reason: 'no-area' });
  return basin.hopper ? withHopper(plain, basin.hopper) : ok(plain);
}

function measure(outline: Outline, floor: readonly FloorPiece[]): BasinGeometry {
  let area = 0;
  let volume = 0;
  let floorArea = 0;
  for (const stretch of floor) {
    const run = stretch.to - stretch.from;
    if (run === 0) {
      floorArea += widthAt(outline.pieces, stretch.from) * Math.abs(stretch.depthTo - stretch.depthFrom);
      continue;
    }
    const slope = (stretch.depthTo - stretch.depthFrom) / run;
    for (const piece of outline.pieces) {
      const part = moments(piece, stretch.from, stretch.to);
      area += part.area;
      volume += (stretch.depthFrom - slope * stretch.from) * part.area + slope * part.first;
      floorArea += part.area * Math.hypot(1, slope);
    }
  }
  const walls = outline.edges.map((edge) => wallOn(edge, floor));
  const perimeter = walls.reduce((sum, wall) => sum + wall.length, 0);
  const wallArea = walls.reduce((sum, wall) => sum + wall.area, 0);
  return geometry({ area, perimeter, length: outline.length, volume, wallArea, floorArea });
}

function geometry(x: Omit<BasinGeometry, 'meanDepth' | 'wettedArea'>): BasinGeometry {
  return { ...x, meanDepth: x.volume / x.area, wettedArea: x.wallArea + x.floorArea };
}

function withHopper(plain: BasinGeometry, hopper: Hopper): Result<BasinGeometry> {
  const opening = hopper.topLength * hopper.topWidth;
  if (opening > plain.area) {
    const issue: Issue = {
      code: 'contradiction',
      where: 'hopper',
      found: opening,
      max: plain.area,
      kind: 'area',
    };
    return fail(issue);
  }
  const added = hopperAddition(hopper);
  return ok(
    geometry({ ...plain, volume: plain.volume + added.volume, floorArea: plain.floorArea + added.floorArea }),
  );
}
