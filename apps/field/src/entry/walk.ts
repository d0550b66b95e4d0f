/** The way from one reading to the next: what is missing, in the order of the walk; back along the way one came. */
import type { Study } from '@firstfire/job';
import { measureNext } from '../next/measure-next.ts';
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
  readonly study: Study;
  readonly skips: Skips;
  readonly path: string;
}

/** The next reading to ask for: neither this one nor one that could not be got. */
export function nextOf({ study, skips, path }: Way): string | undefined {
  return measureNext(study).find((one) => one.path !== path && skips[one.path] === undefined)?.path;
}
