/** What the yard map is asked: where the heater could stand, what is in the yard, and how far it must be from each. */
import { fail, type Issue, ok, type Result } from '../../trace/index.ts';
import { type Face, type Placed, placed, type Thing, thing } from '../heater/index.ts';
import { type Point, shapeIssue } from '../plane/index.ts';

/** A thing of the yard with what the heater keeps from it. */
export interface YardThing extends Thing {
  /** Its distance that is asked for, m; zero where only the faces' clearances count. */
  readonly least: number;
  /** Something solid: the heater cannot stand in it, and it takes room from the faces. A boundary is none. */
  readonly solid: boolean;
}

export interface YardQuestion {
  /** Ring in which the heater has to stand. */
  readonly yard: readonly Point[];
  readonly things: readonly YardThing[];
  /** The heater's box; its place is what is looked for. */
  readonly heater: Omit<Placed, 'at' | 'turn'>;
  /** Clearance asked of each face, m; zero where none is. */
  readonly faces: Readonly<Record<Face, number>>;
  /** Turns to try at each spot, rad. */
  readonly turns: readonly number[];
  /** Distance between spots, m. */
  readonly step: number;
}

/** Spots a map may have: 1000 by 1000. */
const MOST_SPOTS = 1e6;
const MOST_TURNS = 16;

/** The question itself, or everything that is wrong with it; the place names the thing by its number. */
export function yardQuestion(asked: YardQuestion): Result<YardQuestion> {
  const issues: Issue[] = [];
  const yard = shapeIssue({ corners: asked.yard, closed: true });
  if (yard) issues.push({ ...yard, where: `yard.${yard.where}` });
  asked.things.forEach((one, i) => {
    const fit = thing(one);
    if (!fit.ok)
      issues.push(...fit.issues.map((issue) => ({ ...issue, where: `things.${i}.${issue.where}` })));
    if (!(one.least >= 0 && Number.isFinite(one.least)))
      issues.push(negative(`things.${i}.least`, one.least));
  });
  const box = placed({ ...asked.heater, at: { x: 0, y: 0 }, turn: 0 });
  if (!box.ok) issues.push(...box.issues);
  for (const [face, least] of Object.entries(asked.faces))
    if (!(least >= 0 && Number.isFinite(least))) issues.push(negative(`faces.${face}`, least));
  issues.push(...turnIssues(asked.turns));
  if (issues.length === 0) issues.push(...stepIssues(asked));
  return issues.length > 0 ? fail(...issues) : ok(asked);
}

function negative(where: string, found: number): Issue {
  return { code: 'out-of-range', where, found, kind: 'length', min: 0 };
}

function turnIssues(turns: readonly number[]): Issue[] {
  if (turns.length === 0 || turns.length > MOST_TURNS)
    return [{ code: 'out-of-range', where: 'turns', found: turns.length, min: 1, max: MOST_TURNS }];
  const bad = turns.findIndex((turn) => !Number.isFinite(turn));
  return bad < 0
    ? []
    : [{ code: 'not-finite', where: `turns.${bad}`, found: String(turns[bad]), kind: 'angle' }];
}

function stepIssues({ yard, step }: YardQuestion): Issue[] {
  const { width, height } = boundsOf(yard);
  const least = Math.sqrt((width * height) / MOST_SPOTS);
  if (step > 0 && step >= least && step <= 100) return [];
  return [{ code: 'out-of-range', where: 'step', found: step, kind: 'length', min: least, max: 100 }];
}

/** The box around a ring. */
export function boundsOf(ring: readonly Point[]): {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
} {
  const xs = ring.map((p) => p.x);
  const ys = ring.map((p) => p.y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
