/**
 * Darcy friction factor over all Reynolds numbers, continuous and with a continuous slope, so that loss always
 * rises with flow and Newton's method meets no kink.
 *
 *     Re ≤ 2000          f = 64/Re
 *     2000 < Re < 4000   cubic in Re that meets value and slope at both ends
 *     Re ≥ 4000          1/√f = −2·log10(ε/(3.7·D) + 2.51/(Re·√f))
 *
 * How sources disagree: between 2000 and 4000 the flow itself is unsettled and no value is right; many programs
 * bridge it with a cubic, and so does this one. Some print 3.71 for 3.7 (0.1 % in f of rough pipe).
 *
 * Source: Colebrook, J. Inst. Civ. Eng. 11 (1939); laminar: Hagen–Poiseuille (from memory).
 * Range: Re > 0, ε/D 0 to 0.1. Errors: kernel, checks nothing.
 * Worked example: Re = 100,000, ε/D = 0.001 → f = 0.02217; Re = 1000 → f = 0.064.
 */
/** Reynolds numbers where laminar flow ends and the turbulent law begins. */
export const LAMINAR_END = 2000;
export const TURBULENT_START = 4000;
const SPAN = TURBULENT_START - LAMINAR_END;
const LAMINAR_VALUE = 64 / LAMINAR_END;
const LAMINAR_SLOPE = -64 / LAMINAR_END ** 2;
/** 2/ln 10. */
export const TWO_LOG = 2 / Math.LN10;
/** Of the smooth part of the turbulent law. */
export const COLEBROOK_VISCOUS = 2.51;

/** f, dimensionless, of Reynolds number and relative roughness. */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= LAMINAR_END) return 64 / reynolds;
  if (reynolds >= TURBULENT_START) return colebrook(reynolds, relativeRoughness);
  const { value, slope } = turbulentStart(relativeRoughness);
  return bridge(reynolds, value, slope);
}

/** df/dRe. */
export function frictionSlope(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= LAMINAR_END) return -64 / (reynolds * reynolds);
  if (reynolds >= TURBULENT_START)
    return colebrookSlope(reynolds, relativeRoughness, colebrook(reynolds, relativeRoughness));
  const { value, slope } = turbulentStart(relativeRoughness);
  return bridgeSlope(reynolds, value, slope);
}

/** f and its slope where the turbulent law begins: the far end of the bridge. */
export function turbulentStart(relativeRoughness: number): { value: number; slope: number } {
  const value = colebrook(TURBULENT_START, relativeRoughness);
  return { value, slope: colebrookSlope(TURBULENT_START, relativeRoughness, value) };
}

/**
 * Halley's method on x = 1/√f, from a start that is within half a unit of the root for every Re ≥ 4000: the error is
 * cubed, times 1e-4, each step, so that two steps leave rounding only.
 */
export function colebrook(reynolds: number, relativeRoughness: number): number {
  const a = relativeRoughness / 3.7;
  const b = COLEBROOK_VISCOUS / reynolds;
  const x = colebrookStep(a, b, colebrookStep(a, b, colebrookStart(a, b)));
  return 1 / (x * x);
}

/** The start, for x = −2·log10(a + b·x). */
export function colebrookStart(a: number, b: number): number {
  return -TWO_LOG * Math.log(a + 7 * b);
}

/** One step nearer to the root. */
export function colebrookStep(a: number, b: number, x: number): number {
  const inside = a + b * x;
  const miss = x + TWO_LOG * Math.log(inside);
  const r = b / inside;
  const slope = 1 + TWO_LOG * r;
  return x - (2 * miss * slope) / (2 * slope * slope + miss * TWO_LOG * r * r);
}

/** df/dRe of the turbulent law by implicit differentiation, given its f. */
export function colebrookSlope(reynolds: number, relativeRoughness: number, f: number): number {
  const x = 1 / Math.sqrt(f);
  const b = COLEBROOK_VISCOUS / reynolds;
  const k = (TWO_LOG * b) / (relativeRoughness / 3.7 + b * x);
  const dx = (k * x) / reynolds / (1 + k);
  return (-2 * f * dx) / x;
}

/** The cubic between laminar and turbulent flow, given value and slope at its turbulent end. */
export function bridge(reynolds: number, value: number, slope: number): number {
  const t = (reynolds - LAMINAR_END) / SPAN;
  const u = 1 - t;
  const left = LAMINAR_VALUE * (1 + 2 * t) + LAMINAR_SLOPE * SPAN * t;
  const right = value * (1 + 2 * u) - slope * SPAN * u;
  return u * u * left + t * t * right;
}

/** Slope of the same cubic. */
export function bridgeSlope(reynolds: number, value: number, slope: number): number {
  const t = (reynolds - LAMINAR_END) / SPAN;
  const rise = (6 * t * (1 - t) * (value - LAMINAR_VALUE)) / SPAN;
  return rise + (1 - t) * (1 - 3 * t) * LAMINAR_SLOPE + t * (3 * t - 2) * slope;
}
