/**
 * Water that the flue gas of a condensing heater drops.
 *
 *     m = I/H·(h/2 − nv)·M
 *
 * h/2 moles of water form from a mole of fuel, nv leave as vapour: all of them above the dew point, below it what
 * saturated gas holds at the stack's temperature. That is the most that can run; real exchangers give half to nine
 * tenths of it.
 *
 * Source: first law's water balance, as `efficiency.ts`. Range: as there, input to 2 MW.
 * Errors: range issues of `evaluate`.
 * Worked example: 100 000 Btu/h of natural gas, all of its water → 4.27 kg/h, 1.13 US gal.
 */
import type { Formula } from '../trace/index.ts';
import {
  EFFICIENCY_SOURCE,
  type FlueState,
  grossEfficiency,
  vapourLeaving,
  WATER_MOLAR_MASS,
} from './efficiency.ts';

export type CondensingState = FlueState & {
  /** I, gross, W. */
  readonly heatInput: number;
};

/** Condensate, kg/s. */
export const condensate: Formula<CondensingState> = {
  id: 'combustion.condensate',
  equation: 'm = I/H·(h/2 − nv)·M',
  inputs: { ...grossEfficiency.inputs, heatInput: { symbol: 'I', kind: 'heat-rate', min: 0, max: 2e6 } },
  result: { symbol: 'm', kind: 'mass-flow' },
  source: EFFICIENCY_SOURCE,
  kernel: (x) =>
    (x.heatInput / x.grossHeat) * Math.max(0, x.hydrogen / 2 - vapourLeaving(x)) * WATER_MOLAR_MASS,
};
