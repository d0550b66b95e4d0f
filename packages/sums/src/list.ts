/** Every sum, in the order of its name. */
import { gasCapacity } from './gas/gas-capacity.ts';
import type { AnySum } from './sum.ts';
import { fittingLoss } from './water/fitting-loss.ts';
import { pipeLoss } from './water/pipe-loss.ts';
import { staticHead } from './water/static-head.ts';
import { temperatureRise } from './water/temperature-rise.ts';
import { turnover } from './water/turnover.ts';

export const SUMS: readonly AnySum[] = [
  fittingLoss,
  gasCapacity,
  pipeLoss,
  staticHead,
  temperatureRise,
  turnover,
].sort((a, b) => (a.name < b.name ? -1 : 1));
