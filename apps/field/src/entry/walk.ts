/** The way from one reading to the next: what is missing, in the order of the walk; back along the way one came. */
import { answersOf, type JobNow, type Rounds, roundsOf } from '../next/rounds.ts';
import { type Station, stationOf } from '../next/stations.ts';
import { nextInWalk, type Stop, walkOf } from '../next/walk.ts';
import type { Skips } from './skips.ts';

/** Readings visited, by job, the one now open last. */
const trails = new Map<string, string[]>();

export function visited(doc: string): readonly string[] {
  return trails.get(doc) ?? [];
}

/** Notes that a reading is open. One that is opened again cuts the way off behind it. */
export function visit(doc: string, path: string): void {
  const trail = trails.get(doc) ?? [];
  const at = trail.lastIndexOf(path);
  trails.set(doc, at < 0 ? [...trail, path] : trail.slice(0, at + 1));
}

export function previousOf(doc: string, path: string): string | undefined {
  const trail = visited(doc);
  const at = trail.lastIndexOf(path);
  return at < 0 ? trail.at(-1) : trail[at - 1];
}

export interface Way extends JobNow {
  readonly doc: string;
  readonly skips: Skips;
  readonly path: string;
}

/** The round a reading belongs to: while anything is left of the first, a reading that is known counts with it. */
export function walkAt({ path, ...way }: Way): readonly Stop[] {
  const rounds = roundsOf(way, new Set(Object.keys(way.skips)));
  return stopsOf(rounds, isLater(rounds, path), path);
}

function isLater({ first, rest }: Rounds, path: string): boolean {
  return first.length === 0 || rest.some((one) => one.path === path);
}

/** Questions of the second round have a screen of their own. */
function stopsOf({ first, rest }: Rounds, later: boolean, path: string): readonly Stop[] {
  return walkOf(later ? rest.filter((one) => one.path === path || answersOf(one.path) === undefined) : first);
}

/** The next reading to ask for in a round that stood so before the last one was entered, of the job as it stands now. */
export function nextOf(before: Way, now: JobNow): string | undefined {
  const { path } = before;
  const later = isLater(roundsOf(before, new Set(Object.keys(before.skips))), path);
  const left = roundsOf(now, new Set([...Object.keys(before.skips), path]));
  return nextInWalk(stopsOf(left, later, path), path)?.path;
}

export interface Place {
  readonly number: number;
  readonly total: number;
  readonly station: Station;
}

/** How far along the round: the readings entered so far on this walk, and those still missing. */
export function placeOf(way: Way): Place {
  const missing = new Set(walkAt(way).flatMap((stop) => stop.readings.map((one) => one.path)));
  const trail = visited(way.doc);
  const at = trail.lastIndexOf(way.path);
  const done = (at < 0 ? trail : trail.slice(0, at)).filter((one) => !missing.has(one)).length;
  const left = missing.size + (missing.has(way.path) ? 0 : 1);
  return { number: done + 1, total: done + left, station: stationOf(way.path) };
}
