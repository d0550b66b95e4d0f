/**
 * Enthalpy of the gases of a flue against their temperature, ideal gas.
 *
 *     h/R = a1·T + a2·T²/2 + a3·T³/3 + a4·T⁴/4 + a5·T⁵/5
 *
 * Source: the NASA seven-coefficient polynomials, 300 to 1000 K (from memory); they give JANAF's enthalpies over 25 °C
 * within 0.2 %. Nitrogen stands for all of the air that is not oxygen.
 * Range: 250 to 1000 K. Errors: none of their own; the formulas that use them hold the range.
 * Worked example: carbon dioxide from 298.15 to 500 K → 8.30 kJ/mol.
 */

/** J/(mol K). */
export const GAS_CONSTANT = 8.314462618;

export type FlueGas = 'nitrogen' | 'oxygen' | 'carbon-dioxide' | 'water';

const COEFFICIENTS: Readonly<Record<FlueGas, readonly number[]>> = {
  nitrogen: [3.298677, 1.4082404e-3, -3.963222e-6, 5.641515e-9, -2.444854e-12],
  oxygen: [3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12],
  'carbon-dioxide': [2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13],
  water: [4.19864056, -2.0364341e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12],
};

/** Enthalpy (J/mol) at T, K, over an origin that cancels in differences. */
function enthalpy(gas: FlueGas, T: number): number {
  let sum = 0;
  let power = T;
  for (const [k, coefficient] of COEFFICIENTS[gas].entries()) {
    sum += (coefficient * power) / (k + 1);
    power *= T;
  }
  return GAS_CONSTANT * sum;
}

/** What a mole of gas takes to warm from one temperature to another, J/mol; see the head of this file. */
export function enthalpyRise(gas: FlueGas, from: number, to: number): number {
  return enthalpy(gas, to) - enthalpy(gas, from);
}
