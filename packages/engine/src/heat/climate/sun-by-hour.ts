/**
 * How the sunshine of a day falls on its hours.
 *
 *     I ∝ (a + b·cosω)·(cosω − cosωs),  a = 0.409 + 0.5016·sin(ωs − 60°),  b = 0.6609 − 0.4767·sin(ωs − 60°)
 *
 * integrated in closed form over each hour and divided by its integral from sunrise to sunset, so that the hours add
 * up to the day exactly, also where the sun rises or sets within an hour. The correlation is one of long-term means:
 * a single day with a passing cloud is not described by it.
 *
 * How sources disagree: the printed form is evaluated in the middle of each hour and its hours add up to 0.991 to 1.004
 * of the day (ωs 75 to 115°); they are divided by that sum here, as Gueymard (1986) proposed.
 *
 * Source: Collares-Pereira and Rabl (1979), Solar Energy 22:155, as in Duffie and Beckman, Equations 2.13.1 and
 * 2.13.2 (from memory; the constants seen in a public copy).
 * Range: any day length; a day of polar night has no hours with sun.
 * Errors: none.
 *
 * Worked example: ωs = 107°, 8 to 9 o'clock → 0.0758 of the day's sunshine.
 */

/** Share of the day's radiation that falls between two hour angles (rad); `sunset` is ωs. */
export function shareOfDay(from: number, to: number, sunset: number): number {
  const a = Math.max(from, -sunset);
  const b = Math.min(to, sunset);
  if (b <= a) return 0;
  return (integral(b, sunset) - integral(a, sunset)) / (2 * integral(sunset, sunset));
}

/** ∫ (a + b·cosω)·(cosω − cosωs) dω from 0 to ω. */
function integral(omega: number, sunset: number): number {
  const s = Math.sin(sunset - Math.PI / 3);
  const a = 0.409 + 0.5016 * s;
  const b = 0.6609 - 0.4767 * s;
  const c = Math.cos(sunset);
  const first = a * (Math.sin(omega) - c * omega);
  return first + b * (omega / 2 + Math.sin(2 * omega) / 4 - c * Math.sin(omega));
}
