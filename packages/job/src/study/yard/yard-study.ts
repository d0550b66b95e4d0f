/** The yard of a job for people: for each heater the best spots on the plan, what limits each, and how many there are. */
import { type Issue, place } from '@firstfire/engine';
import { fieldFact } from '../facts/field-fact.ts';
import { isLeaving } from '../facts/heaters.ts';
import { nameOf } from '../facts/subjects.ts';
import type { JobView } from '../facts/view.ts';
import { isKnown, siteOf, wordAt } from '../plant/place/sources.ts';
import { type WayToFace, wayToFace } from '../plant/place/way-to-face.ts';
import { type YardOptions, type YardQuestionOfJob, yardQuestionOf } from './yard-of-job.ts';

export type HeaterYard = { readonly heater: string; readonly name: string } & YardAnswer;

export type YardAnswer =
  | { readonly state: 'known'; readonly yard: MappedYard }
  /** Each issue names a reading that is not there. */
  | { readonly state: 'unknown'; readonly missing: readonly Issue[] }
  | { readonly state: 'impossible'; readonly issues: readonly Issue[] };

export interface MappedYard {
  readonly question: YardQuestionOfJob;
  readonly map: place.YardMap;
  /** Spots with a margin of zero or more. */
  readonly allowed: number;
  /** Best first, no two of them standing in one another. */
  readonly best: readonly JudgedSpot[];
  /** Where the plan shows the heater now. */
  readonly drawn?: JudgedSpot;
}

export interface JudgedSpot extends place.SpotLimits {
  readonly at: place.Point;
  /** rad. */
  readonly turn: number;
  /** What it takes that the water connections face the pump, where the plan shows one. */
  readonly connections?: WayToFace;
}

const MOST_SPOTS = 10;
const USUAL_STEP = 0.1;

/** One answer for each heater that is to stand there, in the order of the job. */
export function yardStudy(view: JobView, options: YardOptions): readonly HeaterYard[] {
  return view
    .all('heaters')
    .filter((record) => !isLeaving(record))
    .map((record) => ({
      heater: record.id,
      name: nameOf('heaters', record),
      ...yardFor(view, record.id, options),
    }));
}

function yardFor(view: JobView, heater: string, { profile, step = USUAL_STEP }: YardOptions): YardAnswer {
  const asked = yardQuestionOf(view, heater, profile);
  if (!asked.ok) {
    const missing = asked.issues.every(({ reason }) => reason === 'input-missing');
    return missing
      ? { state: 'unknown', missing: asked.issues }
      : { state: 'impossible', issues: asked.issues };
  }
  const question = asked.value;
  const mapped = place.yardMap({ ...question, step });
  if (!mapped.ok) return { state: 'impossible', issues: mapped.issues };
  const map = mapped.value;
  const judge = (at: place.Point, turn: number): JudgedSpot =>
    judged(view, heater, { question, at, turn, step });
  // The diagonal of the box: however two of them are turned, they do not overlap.
  const apart = Math.hypot(question.heater.width, question.heater.depth);
  const best = place
    .bestSpots(map, { count: MOST_SPOTS, apart })
    .map(({ at, turn }) => judge(at, question.turns[turn] ?? 0));
  const stands = drawnAt(view, heater);
  const drawn = stands === undefined ? {} : { drawn: judge(stands.at, stands.turn) };
  return { state: 'known', yard: { question, map, allowed: place.allowedSpots(map), best, ...drawn } };
}

interface SpotToJudge {
  readonly question: YardQuestionOfJob;
  readonly at: place.Point;
  readonly turn: number;
  readonly step: number;
}

function judged(view: JobView, heater: string, { question, at, turn, step }: SpotToJudge): JudgedSpot {
  const limits = place.spotLimits({ ...question, step }, at, turn);
  const connections = connectionsAt(view, heater, { question, at, turn });
  return { at, turn, ...limits, ...(connections === undefined ? {} : { connections }) };
}

function connectionsAt(
  view: JobView,
  heater: string,
  { question, at, turn }: Omit<SpotToJudge, 'step'>,
): WayToFace | undefined {
  const side = wordAt(view, { collection: 'heaters', id: heater, field: 'waterSide' });
  const pump = question.drawn.find(({ kind }) => kind === 'pump')?.corners[0];
  if (pump === undefined || (side !== 'left' && side !== 'right')) return undefined;
  const reversible = wordAt(view, { collection: 'heaters', id: heater, field: 'waterSideMovable' }) === 'yes';
  const things = question.things.filter(({ solid }) => solid);
  const placed = { ...question.heater, at, turn };
  return wayToFace({ heater: placed, things, faces: question.faces, side, reversible, pump });
}

function drawnAt(
  view: JobView,
  heater: string,
): { readonly at: place.Point; readonly turn: number } | undefined {
  const { spot } = siteOf(view, heater);
  const where = (field: string) => ({ collection: 'spots', id: spot, field });
  const value = (field: string): number => {
    const fact = fieldFact('spots', field, view.record('spots', spot).reading(field));
    return fact.state === 'number' ? fact.value : 0;
  };
  if (!isKnown(view, where('planX')) || !isKnown(view, where('planY'))) return undefined;
  return { at: { x: value('planX'), y: value('planY') }, turn: value('turn') };
}
