/**
 * Steam a relief valve must be able to pass.
 *
 *     W = Q/(1000 Btu/lb)
 *
 * A valve for water is rated by the steam it passes: if the burner will not stop, steam is what comes. 1000 Btu/lb is
 * the rule's round figure for the heat that a pound of steam takes along (970 at atmospheric pressure).
 *
 * How sources disagree: boiler rules take the greatest output, the plumbing rule of water heaters the input; the input
 * is on the safe side of both.
 *
 * Source: ASME Section IV, HG-400, as adopted in 12 NYCRR 4-5.3(a) and HAR 12-223.1-9.
 * Range: 0 to 50 MW. Errors: range issues of `evaluate`.
 * Worked example: 400 000 Btu/h → 400 lb/h.
 */
import { BTU, POUND } from '../quantity/index.ts';
import type { Formula, Source } from '../trace/index.ts';

export const RELIEF_CAPACITY_SOURCE: Source = {
  document: 'ASME Boiler and Pressure Vessel Code, Section IV',
  at: 'HG-400 as adopted in 12 NYCRR 4-5.3(a)',
  known: 'read in a public copy',
};

/** J/kg. */
export const HEAT_OF_RELIEF_STEAM = (1000 * BTU) / POUND;

const heatInput = { symbol: 'Q', kind: 'heat-rate', min: 0, max: 50e6 } as const;
const steam = { symbol: 'W', kind: 'mass-flow', min: 0, max: 25 } as const;

/** Steam to be relieved, kg/s. */
export const reliefSteam: Formula<{ readonly heatInput: number }> = {
  id: 'relief.steam',
  equation: 'W = Q/(1000 Btu/lb)',
  inputs: { heatInput },
  result: steam,
  source: RELIEF_CAPACITY_SOURCE,
  kernel: (x) => x.heatInput / HEAT_OF_RELIEF_STEAM,
};

/** Heat that a valve of a steam rating carries off, W: the inverse of `reliefSteam`. */
export const reliefHeat: Formula<{ readonly steam: number }> = {
  id: 'relief.heat',
  equation: 'Q = W·(1000 Btu/lb)',
  inputs: { steam },
  result: heatInput,
  source: RELIEF_CAPACITY_SOURCE,
  kernel: (x) => x.steam * HEAT_OF_RELIEF_STEAM,
};
