/** Readings that could not be got, and why: kept on the device, so that nobody is asked for them again and again. */
import { Signal } from '../store/signal.ts';

export const SKIP_REASONS = ['no-access', 'not-on-plate', 'later'] as const;

export type SkipReason = (typeof SKIP_REASONS)[number];

export interface Skip {
  readonly reason: SkipReason;
  /** ISO 8601. */
  readonly at: string;
}

/** By `collection/id/field`. */
export type Skips = Readonly<Record<string, Skip>>;

const open = new Map<string, Signal<Skips>>();

const keyOf = (doc: string): string => `firstfire-skips-${doc}`;

/** The skips of a job; a signal, so that lists and walks follow. */
export function skipsOf(doc: string): Signal<Skips> {
  const known = open.get(doc);
  if (known !== undefined) return known;
  const made = new Signal<Skips>(read(doc));
  made.subscribe(() => write(doc, made.get()));
  open.set(doc, made);
  return made;
}

export function skip(doc: string, path: string, reason: SkipReason): void {
  const skips = skipsOf(doc);
  skips.set({ ...skips.get(), [path]: { reason, at: new Date().toISOString() } });
}

/** Asks for it again; also done by entering it. */
export function unskip(doc: string, path: string): void {
  const skips = skipsOf(doc);
  const { [path]: gone, ...rest } = skips.get();
  if (gone !== undefined) skips.set(rest);
}

function read(doc: string): Skips {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(keyOf(doc)) ?? '{}');
    return checked(kept);
  } catch {
    return {};
  }
}

function checked(kept: unknown): Skips {
  if (typeof kept !== 'object' || kept === null) return {};
  return Object.fromEntries(
    Object.entries(kept).filter(
      ([, one]) => typeof one === 'object' && one !== null && SKIP_REASONS.includes(one.reason),
    ),
  );
}

function write(doc: string, skips: Skips): void {
  try {
    localStorage.setItem(keyOf(doc), JSON.stringify(skips));
  } catch {
    // They last as long as the tab.
  }
}
