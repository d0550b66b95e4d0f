/**
 * The three cases a gas line is judged by: everything off (regulators at lock-up), the heaters alone, everything on.
 *
 * Source: *common practice, no source*. Errors: those of the solver, named by the case.
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import type { GasSolution } from './gas-solution.ts';
import type { GasCase, GasSystem } from './gas-system.ts';

export interface GasCases {
  readonly allOff: GasSolution;
  readonly heatersAlone: GasSolution;
  readonly everythingOn: GasSolution;
}

/** Solves the three cases, for the loads that are heaters. */
export function solveGasCases(system: GasSystem, heaters: readonly string[]): Result<GasCases> {
  const allOff = solveCase(system, 'all-off', 'none');
  const heatersAlone = solveCase(system, 'heaters-alone', heaters);
  const everythingOn = solveCase(system, 'everything-on', 'all');
  if (!allOff.ok) return allOff;
  if (!heatersAlone.ok) return heatersAlone;
  if (!everythingOn.ok) return everythingOn;
  return ok({
    allOff: allOff.value,
    heatersAlone: heatersAlone.value,
    everythingOn: everythingOn.value,
  });
}

function solveCase(system: GasSystem, name: string, running: GasCase): Result<GasSolution> {
  const solved = system.solve(running);
  return solved.ok
    ? solved
    : fail(...solved.issues.map((one) => ({ ...one, where: `${name}.${one.where}` })));
}
