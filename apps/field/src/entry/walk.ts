/** The way from one reading to the next: what is missing, in the order of the walk; back along the way one came. */
import type { Study } from '@firstfire/job';
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

export interface Way {
  readonly doc: string;
  readonly study: Study;
  readonly skips: Skips;
  readonly path: string;
}

function stopsOf({ study, skips }: Way): readonly Stop[] {
  return walkOf(study, new Set(Object.keys(skips)));
}

/** The next reading to ask for: at this station while anything is left there, then at the next. */
export function nextOf(way: Way): string | undefined {
  return nextInWalk(stopsOf(way), way.path)?.path;
}

export interface Place {
  readonly number: number;
  readonly total: number;
  readonly station: Station;
}

/** How far along: the readings entered so far on this walk, and those still missing. */
export function placeOf(way: Way): Place {
  const missing = new Set(stopsOf(way).flatMap((stop) => stop.readings.map((one) => one.path)));
  const trail = visited(way.doc);
  const at = trail.lastIndexOf(way.path);
  const done = (at < 0 ? trail : trail.slice(0, at)).filter((one) => !missing.has(one)).length;
  const left = missing.size + (missing.has(way.path) ? 0 : 1);
  return { number: done + 1, total: done + left, station: stationOf(way.path) };
}
