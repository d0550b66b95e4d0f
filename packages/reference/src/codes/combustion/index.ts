/** The rules of combustion: part of the air line. */
import type { AnyRule } from '../../evaluate/index.ts';
import { flueDry, flueLoss, flueOxygen, monoxide } from './flue-test.ts';

export const COMBUSTION_RULES: readonly AnyRule[] = [monoxide, flueOxygen, flueDry, flueLoss];
