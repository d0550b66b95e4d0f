/** Every sum, in the order of its name. */
import { airOpenings } from './air/air-openings.ts';
import { roomAir } from './air/room-air.ts';
import { ventCapacity } from './air/vent-capacity.ts';
import { ventDraught } from './air/vent-draught.ts';
import { saturationIndex } from './chemistry/saturation-index.ts';
import { coAirFree } from './combustion/co-air-free.ts';
import { flue } from './combustion/flue.ts';
import { standardEfficiency } from './efficiency/standard-efficiency.ts';
import { derate } from './gas/derate.ts';
import { gasCapacity } from './gas/gas-capacity.ts';
import { gasClock } from './gas/gas-clock.ts';
import { gasDrop } from './gas/gas-drop.ts';
import { tankVaporisation } from './gas/tank-vaporisation.ts';
import { liftLimit } from './handling/lift-limit.ts';
import { evaporation } from './heat/evaporation.ts';
import { poolLoss } from './heat/pool-loss.ts';
import { warmUp } from './heat/warm-up.ts';
import { ampacity } from './power/ampacity.ts';
import { voltageDrop } from './power/voltage-drop.ts';
import { atmosphere } from './properties/atmosphere.ts';
import { waterProperties } from './properties/water-properties.ts';
import { reliefCapacity } from './relief/relief-capacity.ts';
import type { AnySum } from './sum.ts';
import { fittingLoss } from './water/fitting-loss.ts';
import { pipeLoss } from './water/pipe-loss.ts';
import { staticHead } from './water/static-head.ts';
import { temperatureRise } from './water/temperature-rise.ts';
import { turnover } from './water/turnover.ts';

export const SUMS: readonly AnySum[] = [
  airOpenings,
  reliefCapacity,
  liftLimit,
  standardEfficiency,
  saturationIndex,
  flue,
  coAirFree,
  ampacity,
  roomAir,
  ventCapacity,
  ventDraught,
  atmosphere,
  evaporation,
  poolLoss,
  waterProperties,
  derate,
  fittingLoss,
  gasCapacity,
  gasClock,
  gasDrop,
  pipeLoss,
  staticHead,
  tankVaporisation,
  temperatureRise,
  turnover,
  voltageDrop,
  warmUp,
].sort((a, b) => (a.name < b.name ? -1 : 1));
