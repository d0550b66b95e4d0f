/**
 * Two basins that share a heater and trade water, over one step.
 *
 *     c1·T1 + X·(T1 − T2) = r1 + q1          c = C/Δt,  r = c·T(before) − L(before)
 *     c2·T2 + X·(T2 − T1) = r2 + q2          q1 + q2 ≤ limit, both from 0
 *
 * The heats are the smallest that bring each basin to its set point; where there is not enough, the first basin is
 * served first. Heating one warms the other through X, so each case is solved as the linear system it is.
 *
 * Source: first law; Cramer's rule. Nothing is checked and nothing allocated.
 */
export class Pair {
  // Fractions, so that every field is kept as a number in place from the first (see `scratch`).
  /** C/Δt, W/K. */
  c1 = 0.5;
  c2 = 0.5;
  /** X, W/K. */
  x = 0.5;
  /** Set points, K; 0 where not heated. */
  s1 = 0.5;
  s2 = 0.5;
  /** c·T − L, W. */
  r1 = 0.5;
  r2 = 0.5;
  /** Output of the heater, W. */
  limit = 0.5;
  /** Answers: heats (W) and temperatures (K) at the end of the step. */
  q1 = 0.5;
  q2 = 0.5;
  t1 = 0.5;
  t2 = 0.5;
}

/** Finds the heats and the temperatures. */
export function solvePair(p: Pair): void {
  p.q1 = 0;
  p.q2 = 0;
  settle(p);
  if (p.s1 > p.t1) holdFirst(p);
  if (p.s2 > p.t2 && p.q1 < p.limit) heatSecond(p);
}

/** Temperatures under the heats as they are. */
function settle(p: Pair): void {
  const determinant = p.c1 * p.c2 + p.x * (p.c1 + p.c2);
  const a = p.r1 + p.q1;
  const b = p.r2 + p.q2;
  p.t1 = ((p.c2 + p.x) * a + p.x * b) / determinant;
  p.t2 = ((p.c1 + p.x) * b + p.x * a) / determinant;
}

/** The first at its set point, or as near as the heater brings it; the second takes what the water carries. */
function holdFirst(p: Pair): void {
  const t2 = (p.r2 + p.x * p.s1) / (p.c2 + p.x);
  p.q1 = Math.min(p.limit, (p.c1 + p.x) * p.s1 - p.x * t2 - p.r1);
  settle(p);
}

function heatSecond(p: Pair): void {
  const both1 = (p.c1 + p.x) * p.s1 - p.x * p.s2 - p.r1;
  const both2 = (p.c2 + p.x) * p.s2 - p.x * p.s1 - p.r2;
  if (p.q1 === 0 || both1 <= 0) {
    const t1 = (p.r1 + p.x * p.s2) / (p.c1 + p.x);
    p.q1 = 0;
    p.q2 = Math.min(p.limit, (p.c2 + p.x) * p.s2 - p.x * t1 - p.r2);
  } else if (both1 + both2 <= p.limit) {
    p.q1 = both1;
    p.q2 = both2;
  } else {
    const t2 = (p.limit - p.c1 * p.s1 + p.r1 + p.r2) / p.c2;
    p.q1 = (p.c1 + p.x) * p.s1 - p.x * t2 - p.r1;
    p.q2 = p.limit - p.q1;
  }
  settle(p);
}
