/**
 * Pressures that a relief valve keeps a vessel within.
 *
 *     greatest pressure at full fire = p·(1 + r)      r = 20 % up to 30 psi, 10 % above
 *     further valves set at most at p + 6 psi up to 60 psi, 1.1·p above
 *
 * At 30 psi the two shares meet in a step, from 36 to 33 psi: the rule has it so.
 *
 * Source: 12 NYCRR 4-5.3(a) (rise); COMAR 09.12.01.13 C and NAC 455C.232 (further valves).
 * Range: working pressure 0 to 160 psi, the most that Section IV covers.
 * Errors: range issues of `evaluate`.
 * Worked example: 50 psi → 55 psi at full fire, a second valve at 56 psi at most.
 */
import { PSI } from '../quantity/index.ts';
import type { Formula } from '../trace/index.ts';

interface Vessel {
  /** p, greatest allowable working pressure, Pa gauge. */
  readonly workingPressure: number;
}

const workingPressure = { symbol: 'p', kind: 'pressure', min: 0, max: 160 * PSI } as const;

/** A hair of rounding, so that 30 psi converted is 30 psi. */
const atMost = (pressure: number, psi: number): boolean => pressure <= psi * PSI * (1 + 1e-9);

/** Greatest pressure while the valve blows at full fire, Pa. */
export const fullFirePressure: Formula<Vessel> = {
  id: 'relief.full-fire-pressure',
  equation: 'pmax = p·(1 + r), r = 20 % (p ≤ 30 psi); 10 % (p > 30 psi)',
  inputs: { workingPressure },
  result: { symbol: 'pmax', kind: 'pressure' },
  source: {
    document: 'New York Codes, Rules and Regulations, Title 12',
    at: '4-5.3(a)',
    known: 'read in a public copy',
  },
  kernel: (x) => x.workingPressure * (atMost(x.workingPressure, 30) ? 1.2 : 1.1),
};

/** Highest setting of a valve beside the first, Pa. */
export const furtherValveSetting: Formula<Vessel> = {
  id: 'relief.further-valve-setting',
  equation: 'pset = p + 6 psi (p ≤ 60 psi); 1.1·p (p > 60 psi)',
  inputs: { workingPressure },
  result: { symbol: 'pset', kind: 'pressure' },
  source: {
    document: 'Code of Maryland Regulations 09.12.01.13 C',
    at: 'and Nevada NAC 455C.232',
    known: 'read in a public copy',
  },
  kernel: (x) => (atMost(x.workingPressure, 60) ? x.workingPressure + 6 * PSI : 1.1 * x.workingPressure),
};
