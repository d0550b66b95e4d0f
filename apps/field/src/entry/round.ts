/** A round: the readings of one plate or one pipe, one after another, known alike; then back where one came from. */
import type { HowKnown } from '@firstfire/job';
import { stickHow, sticky } from './sticky.ts';

export interface Round {
  readonly doc: string;
  readonly paths: readonly string[];
  /** Address to go back to. */
  readonly back: string;
  /** What is gone round, by its phrase; a plate when left out. */
  readonly called?: string;
}

let open: { readonly round: Round; readonly how: HowKnown } | undefined;

/** Begins a round; how readings were known before it comes back when it ends. */
export function beginRound(round: Round, how: HowKnown): void {
  endRound();
  open = { round, how: sticky.get().how };
  stickHow(how);
}

/** The round a reading is part of; opening any other reading ends it. */
export function roundAt(doc: string, path: string): Round | undefined {
  return open?.round.doc === doc && open.round.paths.includes(path) ? open.round : undefined;
}

export function endRound(): void {
  if (open === undefined) return;
  stickHow(open.how);
  open = undefined;
}

/** Before and after a reading in its round. */
export function neighbours(
  { paths }: Round,
  path: string,
): { readonly before?: string; readonly after?: string } {
  const at = paths.indexOf(path);
  const [before, after] = [paths[at - 1], paths[at + 1]];
  return { ...(before === undefined ? {} : { before }), ...(after === undefined ? {} : { after }) };
}
