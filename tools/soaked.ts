/** What the last full soak found; `npm run soak` writes it. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const SOAKED = fileURLToPath(new URL('./soaked.json', import.meta.url));

/** From this many jobs on a soak counts as a full one. */
export const FULL_SOAK = 1_000_000;

export interface Soaked {
  readonly jobs: number;
  readonly firstSeed: number;
  /** Verdicts and entries that no job came to, as `rule: verdict` and `rule in edition`. */
  readonly never: readonly string[];
}

export function soaked(): Soaked {
  return JSON.parse(readFileSync(SOAKED, 'utf8')) as Soaked;
}

export function writeSoaked(found: Soaked): void {
  writeFileSync(SOAKED, `${JSON.stringify(found, undefined, 2)}\n`);
}
