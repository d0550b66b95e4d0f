/**
 * Thermal efficiency by the half-hour test: heat found in the water over heat in gas and wires.
 *
 *     Et = cw·m·(Tout − Tin)/(V·H + Ec)
 *
 * The gas is given as a standard volume; what the procedure calls CF brings the meter's foot to it.
 *
 * Source: ANSI Z21.56, 2.10.1, and ASHRAE 146-2011 (from memory).
 * Range: 1 to 100 000 kg of water, 0.1 to 60 K of rise, up to 1000 m3 of gas.
 * Errors: range issues of `evaluate`; no heat at all is `no-solution`.
 * Worked example: 5000 lb warmed by 20.5 °F with 125 ft3 of 1000 Btu/ft3 and no electricity → 82 %.
 */
import type { Formula } from '../trace/index.ts';

export interface ThermalTest {
  /** m, water, kg. */
  readonly waterMass: number;
  /** Tout − Tin, K. */
  readonly rise: number;
  /** cw, J/(kg K). */
  readonly specificHeat: number;
  /** V, standard m3. */
  readonly gasVolume: number;
  /** H, J/m3. */
  readonly heatingValue: number;
  /** Ec, J. */
  readonly electricity: number;
}

/** Thermal efficiency of a test. */
export const thermalTest: Formula<ThermalTest> = {
  id: 'efficiency.thermal-test',
  equation: 'Et = cw·m·ΔT/(V·H + Ec)',
  inputs: {
    waterMass: { symbol: 'm', kind: 'mass', min: 1, max: 1e5 },
    rise: { symbol: 'ΔT', kind: 'temperature-difference', min: 0.1, max: 60 },
    specificHeat: { symbol: 'cw', kind: 'specific-heat', min: 4000, max: 4400 },
    gasVolume: { symbol: 'V', kind: 'standard-gas-volume', min: 0, max: 1000 },
    heatingValue: { symbol: 'H', kind: 'heating-value', min: 1e6, max: 2e8 },
    electricity: { symbol: 'Ec', kind: 'energy', min: 0, max: 1e9 },
  },
  result: { symbol: 'Et', kind: 'ratio' },
  source: { document: 'ANSI Z21.56', at: '2.10.1; ASHRAE 146-2011', known: 'from memory' },
  kernel: (x) => (x.specificHeat * x.waterMass * x.rise) / (x.gasVolume * x.heatingValue + x.electricity),
};
