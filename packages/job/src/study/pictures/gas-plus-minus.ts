/** How far the pressure at a heater may be off: the ± of every reading carried through the physical model. */
import type { JobView } from '../facts/view.ts';
import { gasModels } from '../plant/gas/models.ts';
import type { GasState } from '../plant/gas/physical-system.ts';
import { ownValues } from '../plant/model.ts';
import { plusMinusOf } from '../plant/uncertainty.ts';
import type { ByState } from './gas-shown.ts';
import { STATES } from './gas-states.ts';

/** 95 % half-width (Pa) by state; empty while the model waits for readings. Many runs: not for every frame. */
export function gasPlusMinus(view: JobView, heater: string): ByState {
  const model = gasModels(view).find((one) => one.id === 'gas.physical');
  if (model === undefined || model.missing.length > 0 || model.wrong.length > 0) return {};
  const values = ownValues(model);
  const run = model.run(values);
  if (!run.ok) return {};
  const spreads = plusMinusOf(model, run.outputs, values);
  const of = (state: GasState): number | undefined => spreads.get(`heater/${heater}/inlet-pressure-${state}`);
  return Object.fromEntries(
    STATES.map((state) => [state, of(state)]).filter(([, value]) => value !== undefined),
  );
}
