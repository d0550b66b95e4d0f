/**
 * The lowest and the highest making point of a water-pressure switch.
 *
 *     p,low = p,rest + d + m        p,high = p,running − m
 *
 * The switch opens d under its making point: it must still open over the water that stands in the heater with the
 * pump off, and be made by the least pressure the running pump gives. m is kept on either side.
 *
 * Source: definition; see `switchWindow`. Range: pressures to 2 MPa, differential and margin to 1 MPa.
 * Errors: values outside the range are issues of `evaluate`.
 *
 * Worked example: at rest 2.16 psi, differential 0.5, margin 0.25 → 2.91 psi; running 3.5 psi → 3.25 psi.
 */
import type { Formula, Source, Variable } from '../../trace/index.ts';

const SOURCE: Source = {
  document: 'A switch must open at rest and make in every running state',
  known: 'physics',
};
const GAUGE = { kind: 'pressure', min: -1e5, max: 2e6 } as const;
const SPAN = { kind: 'pressure-difference', min: 0, max: 1e6 } as const;
const MARGIN: Variable = { symbol: 'm', ...SPAN };

export interface SwitchAtRest {
  /** Gauge pressure at the switch with the pump off, Pa. */
  readonly rest: number;
  /** d, Pa. */
  readonly differential: number;
  /** m, Pa. */
  readonly margin: number;
}

/** Lowest making point, gauge, Pa. */
export const switchLowest: Formula<SwitchAtRest> = {
  id: 'water.switch-lowest',
  equation: 'plow = prest + d + m',
  inputs: {
    rest: { symbol: 'prest', ...GAUGE },
    differential: { symbol: 'd', ...SPAN },
    margin: MARGIN,
  },
  result: { symbol: 'plow', kind: 'pressure' },
  source: SOURCE,
  kernel: (x) => x.rest + x.differential + x.margin,
};

export interface SwitchRunning {
  /** Least gauge pressure at the switch while it must stay made, Pa. */
  readonly running: number;
  /** m, Pa. */
  readonly margin: number;
}

/** Highest making point, gauge, Pa. */
export const switchHighest: Formula<SwitchRunning> = {
  id: 'water.switch-highest',
  equation: 'phigh = prunning − m',
  inputs: { running: { symbol: 'prunning', ...GAUGE }, margin: MARGIN },
  result: { symbol: 'phigh', kind: 'pressure' },
  source: SOURCE,
  kernel: (x) => x.running - x.margin,
};
