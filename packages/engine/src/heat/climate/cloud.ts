/**
 * Cloud cover where only sunshine is known.
 *
 *     G/Gclear = 1 − 0.75·N^3.4      Gclear = (0.75 + 2e-5/m·z)·G0
 *
 * solved for N, the share of the sky that is covered. It is a rough estimate (the monthly means of nine cities are
 * met within 0.2 of the sky) and enters only the long-wave radiation of the sky.
 *
 * Source: Kasten and Czeplak (1980), Solar Energy 24:177 (from memory); clear sky after FAO Irrigation and Drainage
 * Paper 56, Equation 37.
 * Range: clearness index from 0; a clearness over the clear sky's is a cloudless one, under the overcast one's
 * overcast: both are what the index means there, not a repair.
 * Errors: none.
 *
 * Worked example: clearness 0.50 at sea level → G/Gclear 0.667, N = 0.79.
 */
export function cloudOfClearness(clearness: number, elevation: number): number {
  const ofClear = clearness / (0.75 + 2e-5 * elevation);
  const covered = Math.min(1, Math.max(0, (1 - ofClear) / 0.75));
  return covered ** (1 / 3.4);
}
