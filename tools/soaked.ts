/** What the last full soak found, and shorter ones since over rules that came later; `npm run soak` writes it. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { RULES } from '@firstfire/reference';

const SOAKED = fileURLToPath(new URL('./soaked.json', import.meta.url));

/** From this many jobs on a soak counts as a full one, and from that many on it is kept at all. */
export const FULL_SOAK = 1_000_000;
export const LEAST_SOAK = 100_000;

export interface Soaked {
  readonly jobs: number;
  readonly firstSeed: number;
  /** Entries of rules in editions that there were. */
  readonly entries: number;
  /** Verdicts and entries that no job came to, as `rule: verdict` and `rule in edition`. */
  readonly never: readonly string[];
}

export function entriesNow(): number {
  return RULES.flatMap(({ editions }) => editions).length;
}

/** The full one first. */
export function soaked(): readonly Soaked[] {
  return JSON.parse(readFileSync(SOAKED, 'utf8')) as readonly Soaked[];
}

/** A full soak stands in the place of all before; a shorter one is put behind the last full one. */
export function writeSoaked(found: Soaked): void {
  const before = found.jobs >= FULL_SOAK ? [] : soaked();
  writeFileSync(SOAKED, `${JSON.stringify([...before, found], undefined, 2)}\n`);
}
