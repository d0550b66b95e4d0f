/**
 * Least integrated thermal efficiency a consumer pool heater may be made with from 30 May 2028.
 *
 *     gas        84 %·(QIN + 491)/(QIN + 2536)        QIN in Btu/h
 *     electric   600 %·PE/(PE + 1619)                 PE, active output, in Btu/h
 *
 * Before that the limit is a thermal efficiency: 78 % from 1990, 82 % from 16 April 2013.
 *
 * Source: 10 CFR 430.32(k); 88 FR 34624 (formulas from memory, date read).
 * Range: 1 kW to 2 MW. Errors: range issues of `evaluate`.
 * Worked example: 250 000 Btu/h of gas → 83.3 %.
 */
import { BTU, HOUR } from '../quantity/index.ts';
import type { Formula, Source } from '../trace/index.ts';

const BTU_PER_HOUR = BTU / HOUR;

export const MINIMUM_EFFICIENCY_SOURCE: Source = {
  document: '10 CFR 430.32(k)',
  at: '88 FR 34624',
  known: 'from memory',
};

/** Thermal efficiency of gas-fired heaters, by the first day it holds. */
export const THERMAL_MINIMA: readonly { readonly from: string; readonly thermalEfficiency: number }[] = [
  { from: '1990-01-01', thermalEfficiency: 0.78 },
  { from: '2013-04-16', thermalEfficiency: 0.82 },
];

/** Least integrated efficiency of a gas-fired heater. */
export const gasMinimum: Formula<{ readonly heatInput: number }> = {
  id: 'efficiency.gas-minimum',
  equation: 'TEI ≥ 84 %·(QIN + 491)/(QIN + 2536)',
  inputs: { heatInput: { symbol: 'QIN', kind: 'heat-rate', min: 1000, max: 2e6 } },
  result: { symbol: 'TEI', kind: 'ratio' },
  source: MINIMUM_EFFICIENCY_SOURCE,
  kernel: (x) => {
    const input = x.heatInput / BTU_PER_HOUR;
    return (0.84 * (input + 491)) / (input + 2536);
  },
};

/** Least integrated efficiency of an electric heater, a heat pump. */
export const electricMinimum: Formula<{ readonly heatOutput: number }> = {
  id: 'efficiency.electric-minimum',
  equation: 'TEI ≥ 600 %·PE/(PE + 1619)',
  inputs: { heatOutput: { symbol: 'PE', kind: 'heat-rate', min: 1000, max: 2e6 } },
  result: { symbol: 'TEI', kind: 'ratio' },
  source: MINIMUM_EFFICIENCY_SOURCE,
  kernel: (x) => {
    const output = x.heatOutput / BTU_PER_HOUR;
    return (6 * output) / (output + 1619);
  },
};
