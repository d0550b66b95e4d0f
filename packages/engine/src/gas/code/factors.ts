/**
 * The Cr and Y of a given fuel: the code's printed ones at its own gravity, Cr worked out anew for another gravity.
 *
 * Y has no expression the code prints; the printed one of the fuel is kept (1 % at most between its two gases).
 */
import { type Fuel, SIZING_FACTORS, type SizingFactors } from '../fuel.ts';
import { SIZING_TEMPERATURE, sizingFactor } from './sizing-factor.ts';

/** Gravity and viscosity (Pa s) that the code's own Cr stands on. */
export const CODE_GAS = {
  natural: { specificGravity: 0.6, viscosity: 12e-6 },
  propane: { specificGravity: 1.5, viscosity: 8e-6 },
} as const;

/** Cr and Y for the sizing equations. */
export function codeFactors(fuel: Fuel): SizingFactors {
  const printed = SIZING_FACTORS[fuel.name];
  const code = CODE_GAS[fuel.name];
  if (fuel.specificGravity === code.specificGravity) return printed;
  const gas = { specificGravity: fuel.specificGravity, viscosity: code.viscosity };
  return { cr: sizingFactor.kernel({ ...gas, temperature: SIZING_TEMPERATURE }), y: printed.y };
}
