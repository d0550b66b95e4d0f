/**
 * American wire gauge by its geometric definition.
 *
 *     d = 0.127 mm · 92^((36 − n)/39)
 *
 * so that No. 36 is 0.005 in and No. 4/0 is 0.460 in across. n = 0, −1, −2, −3 are written 1/0, 2/0, 3/0, 4/0.
 *
 * Source: ASTM B258 (from memory). Range: 4/0 to 40, whole numbers on paper; the functions take any n.
 * Worked example: No. 8 → d = 3.264 mm, 8.37 mm² (16 510 circular mils in NEC chapter 9 Table 8).
 */
const SMALLEST = 0.127e-3;

/** The gauge numbers that are read and printed. */
export const GAUGES = { thickest: -3, thinnest: 40 } as const;

/** Cross-section (m²) of gauge n. */
export function gaugeArea(n: number): number {
  const diameter = SMALLEST * 92 ** ((36 - n) / 39);
  return (Math.PI / 4) * diameter ** 2;
}

/** Gauge number of a cross-section (m²), not rounded; the inverse of `gaugeArea`. */
export function gaugeOf(area: number): number {
  const diameter = Math.sqrt((4 / Math.PI) * area);
  return 36 - (39 * Math.log(diameter / SMALLEST)) / Math.log(92);
}

/** The way a gauge number is written: 8, 1/0, 4/0. */
export function gaugeText(n: number): string {
  return n > 0 ? String(n) : `${1 - n}/0`;
}

const GAUGE = /^\s*(awg\s*#?|#|no\.?\s*)?(?:(\d{1,2})|([1-4])\/0|(0{2,4}))\s*(awg|ga|ga\.|gauge)?\s*$/i;

/**
 * The gauge number of a text such as `#8 AWG`, `AWG 8`, `4/0`, `0000`; undefined where it is none. A plain number is one
 * only where `bare` says that gauges are meant.
 */
export function readGauge(text: string, bare: boolean): number | undefined {
  const match = GAUGE.exec(text);
  if (match === null) return undefined;
  const [, mark, number, aught, zeros, name] = match;
  if (!bare && mark === undefined && name === undefined && number !== undefined) return undefined;
  if (number !== undefined) return Number(number);
  return 1 - (aught !== undefined ? Number(aught) : (zeros ?? '').length);
}
