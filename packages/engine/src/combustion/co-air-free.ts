/**
 * Carbon monoxide as it would read had no air thinned the sample.
 *
 *     COaf = CO·20.9/(20.9 − O2)
 *
 * How sources disagree: 20.9 or 20.95 % for the oxygen of air; the difference is under 1 % up to 15 % oxygen.
 *
 * Source: the instruments of the trade use this form with 20.9 (common practice, no source); the balance of dilution.
 * Range: oxygen up to 20 %, carbon monoxide up to 10 %. Errors: range issues of `evaluate`.
 * Worked example: 100 ppm at 10.45 % oxygen → 200 ppm.
 */
import type { Formula, Source } from '../trace/index.ts';

export const CO_AIR_FREE_SOURCE: Source = {
  document: 'common practice',
  at: 'dilution of the sample, 20.9 % oxygen in air',
  known: 'common practice, no source',
};

const OXYGEN_OF_INSTRUMENTS = 0.209;

/** Carbon monoxide, air-free, as a share of the dry flue gas. */
export const coAirFree: Formula<{ readonly carbonMonoxide: number; readonly oxygen: number }> = {
  id: 'combustion.co-air-free',
  equation: 'COaf = CO·20.9/(20.9 − O2)',
  inputs: {
    carbonMonoxide: { symbol: 'CO', kind: 'volume-fraction', min: 0, max: 0.1 },
    oxygen: { symbol: 'O2', kind: 'ratio', min: 0, max: 0.2 },
  },
  result: { symbol: 'COaf', kind: 'volume-fraction' },
  source: CO_AIR_FREE_SOURCE,
  kernel: (x) => (x.carbonMonoxide * OXYGEN_OF_INSTRUMENTS) / (OXYGEN_OF_INSTRUMENTS - x.oxygen),
};
