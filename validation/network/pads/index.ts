/** Every pad of the collection. */
import type { Pad } from '../pad.ts';
import { PAD_01 } from './pad-01.ts';
import { PAD_02 } from './pad-02.ts';
import { PAD_04 } from './pad-04.ts';
import { PAD_05 } from './pad-05.ts';
import { PAD_07 } from './pad-07.ts';
import { PAD_08 } from './pad-08.ts';
import { PAD_10 } from './pad-10.ts';
import { PAD_12 } from './pad-12.ts';
import { PAD_13 } from './pad-13.ts';
import { PAD_15 } from './pad-15.ts';

export const PADS: readonly Pad[] = [
  PAD_01,
  PAD_02,
  PAD_04,
  PAD_05,
  PAD_07,
  PAD_08,
  PAD_10,
  PAD_12,
  PAD_13,
  PAD_15,
];
