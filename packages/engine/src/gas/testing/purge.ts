/**
 * Purging: how much the piping holds, how much gas passes to clear it, and whether it must be done outdoors.
 *
 *     V = π/4·D²·L        purge = multiplier · V
 *
 * Purging outdoors is asked for when the piping works above 2 psi, or when the length of a large size passes the
 * limit of the code's table (2-1/2 in over 50 ft, 3 in over 30 ft, 4 in over 15 ft, 6 in over 10 ft, 8 in any).
 * Lengths of one row of the table are added up over the system: the stricter reading.
 *
 * Source: IFGC 406.7.1 and Table 406.7.1.1 (read in public copies); the multiplier is *common practice, no source*
 * (1.5 to 2 pipe volumes, then until a detector shows gas).
 * Range: diameter 5 to 700 mm, length to 100 km, multiplier 1 to 10. Errors: range issues of `evaluate`.
 *
 * Worked example: 100 ft of 2 in Schedule 40 → 2.33 ft3, which needs no outdoor purge at 7 in w.c.
 */
import { PSI } from '../../quantity/index.ts';
import type { Formula, Source } from '../../trace/index.ts';

export interface PipeBore {
  readonly insideDiameter: number;
  readonly length: number;
}

/** Volume (m3) inside a run of pipe. */
export const pipeVolume: Formula<PipeBore> = {
  id: 'gas.pipe-volume',
  equation: 'V = π/4·D²·L',
  inputs: {
    insideDiameter: { symbol: 'D', kind: 'diameter', min: 0.005, max: 0.7 },
    length: { symbol: 'L', kind: 'length', min: 0, max: 1e5 },
  },
  result: { symbol: 'V', kind: 'volume' },
  source: { document: 'Geometry', at: 'cylinder', known: 'physics' },
  kernel: (x) => (Math.PI / 4) * x.insideDiameter ** 2 * x.length,
};

export interface Purge {
  readonly volume: number;
  readonly multiplier: number;
}

/** Gas (m3 at the state in the pipe) that passes before the piping is clear. */
export const purgeVolume: Formula<Purge> = {
  id: 'gas.purge-volume',
  equation: 'Vp = k·V',
  inputs: {
    volume: { symbol: 'V', kind: 'volume', min: 0, max: 1000 },
    multiplier: { symbol: 'k', kind: 'ratio', min: 1, max: 10 },
  },
  result: { symbol: 'Vp', kind: 'volume' },
  source: { document: 'Trade', known: 'common practice, no source' },
  kernel: (x) => x.multiplier * x.volume,
};

export interface PurgeRow {
  /** Nominal size from and below which the row holds, m; the last row has no upper end. */
  readonly nominalFrom: number;
  readonly nominalBelow?: number;
  /** Length over which the row asks for an outdoor purge, m. */
  readonly lengthOver: number;
}

export interface PurgeRule {
  /** Gauge pressure over which every system is purged outdoors, Pa. */
  readonly pressureOver: number;
  readonly rows: readonly PurgeRow[];
  readonly source: Source;
}

export interface PurgedPipe {
  /** Nominal size (the trade's inches, in m). */
  readonly nominal: number;
  readonly length: number;
}

export type OutdoorPurge =
  | { readonly outdoors: false }
  | { readonly outdoors: true; readonly because: 'pressure' | 'size-and-length'; readonly row?: PurgeRow };

/** Whether a system must be purged to the outdoors (and through inert gas). */
export function outdoorPurge(
  rule: PurgeRule,
  system: { readonly workingPressure: number; readonly pipes: readonly PurgedPipe[] },
): OutdoorPurge {
  if (system.workingPressure > rule.pressureOver) return { outdoors: true, because: 'pressure' };
  const row = rule.rows.find((one) => lengthIn(one, system.pipes) > one.lengthOver);
  return row === undefined ? { outdoors: false } : { outdoors: true, because: 'size-and-length', row };
}

function lengthIn(row: PurgeRow, pipes: readonly PurgedPipe[]): number {
  // A nominal size given in metres may differ from the row's by rounding alone.
  const near = 1e-6;
  return pipes
    .filter((pipe) => pipe.nominal >= row.nominalFrom - near)
    .filter((pipe) => row.nominalBelow === undefined || pipe.nominal < row.nominalBelow - near)
    .reduce((sum, pipe) => sum + pipe.length, 0);
}

/** The pressure of the code's rule, 2 psi gauge, Pa. */
export const PURGE_OUTDOORS_OVER = 2 * PSI;
