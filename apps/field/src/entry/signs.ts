/** Where a value may lie on either side of zero, and what the two sides are called there. */
import type { quantity } from '@firstfire/engine';

export interface SignWords {
  readonly above: 'above' | 'above-zero' | 'right' | 'up' | 'anticlockwise';
  readonly below: 'below' | 'below-zero' | 'left' | 'down' | 'clockwise';
}

interface Ranged {
  readonly kind: quantity.Kind;
  readonly min?: number;
}

const ZERO: SignWords = { above: 'above-zero', below: 'below-zero' };
const HEIGHT: SignWords = { above: 'above', below: 'below' };

/** 0 °F, in kelvins: colder air than this is typed below zero in either scale. */
const COLD = 255.4;

export function signsOf(field: string, { kind, min }: Ranged): SignWords | undefined {
  if (field === 'planX') return { above: 'right', below: 'left' };
  if (field === 'planY') return { above: 'up', below: 'down' };
  if (kind === 'temperature') return min !== undefined && min < COLD ? ZERO : undefined;
  if (min === undefined || min >= 0) return undefined;
  if (kind === 'angle') return { above: 'anticlockwise', below: 'clockwise' };
  return kind === 'length' ? HEIGHT : ZERO;
}
