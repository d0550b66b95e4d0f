/**
 * Cloud cover where only sunshine is known.
 *
 *     K = a + b·(1 − N),   a = 0.25, b = 0.50
 *
 * solved for N, the share of the sky that is covered; K is the clearness index. It is a rough estimate, for lack of an
 * observation, and enters only the long-wave radiation of the sky.
 *
 * How sources disagree: a and b vary with the place (a 0.2 to 0.3, b 0.4 to 0.6); the values for an average climate
 * are followed. The curve of Kasten and Czeplak (1980), 1 − 0.75·N^3.4, is one of hours and cannot be turned round
 * for a day's mean: it gives skies that are 0.2 too cloudy.
 *
 * Source: Ångström's equation with FAO Irrigation and Drainage Paper 56, Equation 35; the sunshine fraction taken for
 * the share of clear sky.
 * Range: any clearness. Below a the sky is covered, above a + b it is clear: that is what the index means there.
 * Errors: none.
 *
 * Worked example: K = 0.50 → N = 0.50.
 */
export function cloudOfClearness(clearness: number): number {
  return Math.min(1, Math.max(0, 1 - (clearness - 0.25) / 0.5));
}
