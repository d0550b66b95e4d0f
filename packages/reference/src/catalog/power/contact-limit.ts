/** Voltages a wet person may touch: the low-voltage contact limit. */
import type { Source } from '@firstfire/engine';

export const CONTACT_LIMIT_SOURCE: Source = {
  document: 'National Electrical Code 2017',
  at: '680.2, low voltage contact limit',
  known: 'read in a public copy',
};

/** V: effective for a sine wave and steady direct current, peak for the two others. */
export const CONTACT_LIMIT = {
  sine: 15,
  'other alternating': 21.2,
  direct: 30,
  'direct, interrupted 10 to 200 times a second': 12.4,
} as const;
