/**
 * What a line's column says: its verdict, the smallest margin known, and whether something is missing behind it. One
 * scale for all six lines: a margin of one half fills a side, and the square root keeps small ones in sight.
 */
import type { LineStudy } from '@firstfire/job';
import type { Finding } from '@firstfire/reference';

export type Shape = 'meets' | 'tight' | 'fails' | 'unknown' | 'does not apply' | 'not built';

export interface Column {
  readonly line: string;
  readonly shape: Shape;
  /** The finding the column is drawn to. */
  readonly worst?: Finding;
  /** Findings that lack readings. */
  readonly unknown: number;
  /** A good figure stands, and something is missing beside it. */
  readonly partKnown: boolean;
  /** Height of the block as a share of a side, 0 to 1; up for what is to spare, down for what is short. */
  readonly height: number;
  readonly findings: readonly Finding[];
  /** Lower and upper end of the ±, as shares of a side; only where it crosses the limit or the dotted line. */
  readonly bracket?: readonly [low: number, high: number];
}

/** Margins below this are tight. */
const TIGHT = 0.1;

/** A margin as a share of a side. Worked example: 10 % → √(0.1/0.5) = 0.447. */
export function heightOf(margin: number): number {
  return Math.sqrt(Math.min(Math.abs(margin), 0.5) / 0.5);
}

/** Up for what is to spare, down for what is short. */
export function signedHeight(margin: number): number {
  return Math.sign(margin) * heightOf(margin);
}

/**
 * Where the ± of a margin reaches, when it reaches over the limit or the dotted line; else nobody need look at it.
 * Worked example: 4 % ± 6 % → from −2 % to 10 %, −0.2 to 0.447.
 */
export function bracketOf(margin: number, plusMinus: number): Column['bracket'] {
  const [low, high] = [margin - plusMinus, margin + plusMinus];
  const crosses = (line: number): boolean => low < line && line < high;
  return crosses(0) || crosses(TIGHT) ? [signedHeight(low), signedHeight(high)] : undefined;
}

/** Heights of the findings beside the one that is drawn, as shares of a side; one where two fall together. */
export function ticksOf({ worst, findings }: Pick<Column, 'worst' | 'findings'>): readonly number[] {
  const others = findings.filter((one) => one !== worst && one.verdict !== 'does not apply');
  const heights = others.flatMap(({ margin, verdict }) => {
    if (verdict === 'unknown') return [];
    return [margin === undefined ? (verdict === 'fails' ? -FULL : FULL) : signedHeight(margin)];
  });
  return [...new Set(heights.map((height) => Math.round(height * 9) / 9))];
}

/** Height where a yes or no has no margin: a full block or a full wedge. */
const FULL = 1;

export function columnOf({ line, built, findings }: LineStudy): Column {
  const asked = findings.filter((one) => one.verdict !== 'does not apply');
  const unknown = asked.filter((one) => one.verdict === 'unknown').length;
  const known = asked.filter((one) => one.verdict !== 'unknown');
  const base = { line, unknown, findings };
  if (!built) return { ...base, shape: 'not built', partKnown: false, height: 0 };
  if (asked.length === 0) return { ...base, shape: 'does not apply', partKnown: false, height: 0 };
  const worst = known[0];
  if (worst === undefined) return { ...base, shape: 'unknown', partKnown: false, height: FULL };
  const drawn = worst.verdict === 'meets' ? (smallest(known) ?? worst) : worst;
  return {
    ...base,
    shape: worst.verdict,
    worst: drawn,
    partKnown: unknown > 0,
    height: drawn.margin === undefined ? FULL : heightOf(drawn.margin),
  };
}

/** Yes and no have no margin, and stand behind those that have one. */
function smallest(findings: readonly Finding[]): Finding | undefined {
  return findings.reduce<Finding | undefined>(
    (least, one) => ((one.margin ?? Infinity) < (least?.margin ?? Infinity) ? one : least),
    undefined,
  );
}
