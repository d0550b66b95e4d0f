/**
 * Corrugated tubing in the physical network: the power law that its capacity tables show.
 *
 *     (p1² − p2²)/L = (q·√(S·T/(St·288.9 K))/a)^n        a, n by least squares of the logarithms over all rows
 *
 * Corrugations shed eddies at every fold; there is no friction factor to look up, and the tables are what was
 * measured. Over every row of both tables n is 1.88 to 2.14 and the fit misses a printed capacity by 3.6 % at most
 * (EHD 37, whose low-pressure column disagrees with its 2 psi one: 6.4 %).
 *
 * Source: the tables handed in. Range: n within 1 to 3, else the table is not one of tubing. Errors: `ill-formed`
 * with reason `no-such-size` or `not-a-power-law`.
 *
 * Worked example: EHD 18, 100 ft, 75 ft3/h of natural gas from 2 psi → 0.14 psi lost.
 */
import type { PowerLaw } from '../../numerics/index.ts';
import { FOOT, PSI } from '../../quantity/index.ts';
import { type Formula, fail, ok, type Result } from '../../trace/index.ts';
import { CORRUGATED_SOURCE, type CorrugatedTable, squaredDrop } from '../code/corrugated.ts';
import { SIZING_TEMPERATURE } from '../code/sizing-factor.ts';
import { elevationFactor, meanElevationFactor } from './elevation.ts';
import { gasConstantOf } from './gas-state.ts';

export interface CorrugatedTube {
  readonly ehd: number;
  readonly tables: readonly CorrugatedTable[];
}

export interface CorrugatedFit {
  /** n of the gradient over flow. */
  readonly exponent: number;
  /** Gradient of p² (Pa²/m) at 1 standard m3/s of a gas of gravity 1 at 520 °R. */
  readonly coefficient: number;
}

/** Points of the logarithms: flow as of gravity 1, gradient of p². */
function points({ ehd, tables }: CorrugatedTube): [number, number][] {
  return tables.flatMap((table) => {
    const squared = squaredDrop(table.inletPressure, table.pressureDrop);
    const flows = table.sizes.find((size) => size.ehd === ehd)?.flows ?? [];
    return flows.map((flow, i): [number, number] => [
      Math.log(flow * Math.sqrt(table.specificGravity)),
      Math.log(squared / (table.lengths[i] ?? Number.NaN)),
    ]);
  });
}

/** A table does not change: what was fitted to a list of them by size. */
const fitted = new WeakMap<readonly CorrugatedTable[], Map<number, Result<CorrugatedFit>>>();

/** Fits the power law of a size. */
export function corrugatedFit(tube: CorrugatedTube): Result<CorrugatedFit> {
  const bySize = fitted.get(tube.tables) ?? new Map<number, Result<CorrugatedFit>>();
  const known = bySize.get(tube.ehd);
  if (known !== undefined) return known;
  const found = fit(tube);
  fitted.set(tube.tables, bySize.set(tube.ehd, found));
  return found;
}

function fit(tube: CorrugatedTube): Result<CorrugatedFit> {
  const where = 'ehd';
  const xy = points(tube);
  if (xy.length < 2) return fail({ code: 'ill-formed', where, found: tube.ehd, reason: 'no-such-size' });
  const meanX = xy.reduce((sum, [x]) => sum + x, 0) / xy.length;
  const meanY = xy.reduce((sum, [, y]) => sum + y, 0) / xy.length;
  const covariance = xy.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  const exponent = covariance / xy.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
  if (!(exponent >= 1 && exponent <= 3))
    return fail({ code: 'ill-formed', where, found: tube.ehd, reason: 'not-a-power-law' });
  return ok({ exponent, coefficient: Math.exp(meanY - exponent * meanX) });
}

/** The network's law of a run of corrugated tubing (length in m) for a gas of a gravity and temperature (K). */
export function corrugatedLaw(
  fit: CorrugatedFit,
  run: { readonly length: number; readonly specificGravity: number; readonly temperature: number },
): PowerLaw {
  const heaviness = Math.sqrt((run.specificGravity * run.temperature) / SIZING_TEMPERATURE);
  return { type: 'power', n: fit.exponent, r: fit.coefficient * run.length * heaviness ** fit.exponent };
}

const absolute = (symbol: string) => ({ symbol, kind: 'absolute-pressure', min: 1000, max: 3e6 }) as const;

export interface CorrugatedFlow {
  readonly inletPressure: number;
  readonly flow: number;
  readonly length: number;
  /** Outlet above inlet, m. */
  readonly rise: number;
  readonly specificGravity: number;
  readonly temperature: number;
  /** n of the fit. */
  readonly exponent: number;
  /** What the fit carries of gas of gravity 1 at 520 °R over 100 ft from 2 to 1 psi, standard m3/s. */
  readonly referenceFlow: number;
}

/** Gradient of p² that the reference flow belongs to, Pa²/m. */
const REFERENCE_GRADIENT = squaredDrop(2 * PSI, PSI) / (100 * FOOT);

/** The fit's flow at the reference gradient, standard m3/s. */
export function referenceFlow(fit: CorrugatedFit): number {
  return (REFERENCE_GRADIENT / fit.coefficient) ** (1 / fit.exponent);
}

/** Absolute pressure (Pa) at the outlet of corrugated tubing. */
export const corrugatedOutlet: Formula<CorrugatedFlow> = {
  id: 'gas.corrugated-outlet',
  equation: 'p1² − p2²·e^s = w·L·G0·(q·√(S·T/288.9 K)/q0)^n',
  inputs: {
    inletPressure: absolute('p1'),
    flow: { symbol: 'q', kind: 'standard-gas-flow', min: 0, max: 1000 },
    length: { symbol: 'L', kind: 'length', min: 0, max: 1e5 },
    rise: { symbol: 'Δz', kind: 'length', min: -500, max: 500 },
    specificGravity: { symbol: 'S', kind: 'ratio', min: 0.3, max: 2.2 },
    temperature: { symbol: 'T', kind: 'temperature', min: 220, max: 340 },
    exponent: { symbol: 'n', kind: 'ratio', min: 1, max: 3 },
    referenceFlow: { symbol: 'q0', kind: 'standard-gas-flow', min: 1e-9, max: 100 },
  },
  result: absolute('p2'),
  source: CORRUGATED_SOURCE,
  kernel: (x) => {
    const coefficient = REFERENCE_GRADIENT / x.referenceFlow ** x.exponent;
    const { r, n } = corrugatedLaw({ exponent: x.exponent, coefficient }, x);
    const gas = { gasConstant: gasConstantOf(x.specificGravity), temperature: x.temperature };
    const loss = meanElevationFactor(gas, 0, x.rise) * r * x.flow ** n;
    return Math.sqrt((x.inletPressure ** 2 - loss) / elevationFactor(gas, x.rise));
  },
};
