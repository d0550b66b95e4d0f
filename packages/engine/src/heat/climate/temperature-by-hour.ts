/**
 * How the temperature of a mean day swings.
 *
 *     (T − T̄)/A = 0.4632·cos(t* − 3.805) + 0.0984·cos(2t* − 0.360) + 0.0168·cos(3t* − 0.822) + 0.0138·cos(4t* − 3.513)
 *     t* = 2π·(t − 1)/24,  t in hours, 1 at 1 a.m.        A = 25.8·K̄T − 5.21 K, lowest to highest of the day
 *
 * The mean over 24 equal steps is zero for whichever A, so the month's mean stands.
 *
 * How sources disagree: A is the swing of the mean day, which is less than the mean of the days' swings, since days
 * peak at different hours: Chicago's daily highs and lows stand 8 to 12 K apart where A is 6 to 9 K. Where the normals
 * give a mean daily high and low, their difference is used as A. At a coast the air swings less than A (*common
 * practice, no source*).
 *
 * Source: Erbs, Klein and Beckman (1983), ASHRAE Journal 25(6):60, Equations 4 and 5 (from memory).
 * Range: K̄T 0.2 to 0.8 for A.
 * Errors: none; the functions are total.
 *
 * Worked example: K̄T 0.60 → A = 10.3 K; at 3 to 4 p.m. the air stands 4.8 K above its mean.
 */

const HARMONICS = [
  [0.4632, 3.805],
  [0.0984, 0.36],
  [0.0168, 0.822],
  [0.0138, 3.513],
] as const;

/** (T − T̄)/A at a time of the day, hours after midnight. */
export function diurnalShape(hour: number): number {
  const t = (2 * Math.PI * (hour - 1)) / 24;
  return HARMONICS.reduce((sum, [a, phase], i) => sum + a * Math.cos((i + 1) * t - phase), 0);
}

/** A (K): mean daily swing, lowest to highest, by the clearness index of the month; never below 0. */
export function diurnalSwing(clearness: number): number {
  return Math.max(0, 25.8 * clearness - 5.21);
}
