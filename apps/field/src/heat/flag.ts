/** The wanted hour as something that can be moved: by minutes for a spa, by hours for a pool. */
import { quantity } from '@firstfire/engine';
import type { Sliding } from '../ui/slide.ts';

const { HOUR } = quantity;
const LEAST = 300;
const MOST = 30 * 24 * HOUR;
const SHORT = 2 * HOUR;
const LARGE = 6;

export interface FlagSteps {
  readonly steps: readonly number[];
  readonly usual: number;
}

export function flagSteps(wanted: number): FlagSteps {
  return wanted <= SHORT
    ? { steps: [LEAST, 3 * LEAST], usual: LEAST }
    : { steps: [HOUR, LARGE * HOUR], usual: HOUR };
}

export function flagSliding(basin: string, wanted: number): Sliding {
  const { usual: step } = flagSteps(wanted);
  const at = { collection: 'basins', id: basin, field: 'warmUpTime' };
  return { at, value: wanted, step, large: LARGE * step, least: LEAST, most: MOST, made };
}

function made(wanted: number) {
  const unit = wanted < SHORT ? 'min' : 'h';
  return { value: Number(quantity.fromSi(wanted, unit, 'time').toFixed(2)), unit, how: 'told' } as const;
}
