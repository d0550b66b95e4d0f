/** The rules of the flame: part of the air line, what it burns and gives part of gas and heat. */
import type { AnyRule } from '../../evaluate/index.ts';
import { clockedInput, heatFoundInWater } from './firing.ts';
import { flueDry, flueLoss, flueOxygen, monoxide } from './flue-test.ts';

export const COMBUSTION_RULES: readonly AnyRule[] = [
  monoxide,
  flueOxygen,
  flueDry,
  flueLoss,
  clockedInput,
  heatFoundInWater,
];
