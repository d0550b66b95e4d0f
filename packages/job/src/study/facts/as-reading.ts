/** Whatever stands in a field, as a reading: anything may stand in a file. */
import { HOW_KNOWN, type Reading } from '../../schema/index.ts';

/** Stands for a value that is no reading at all: whatever its field expects, this is not it. */
const MALFORMED: Reading = { value: '', how: 'assumed' };

/** The value itself where it has the form of a reading, so that what it means is worked out once. */
export function asReading(value: unknown): Reading {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return MALFORMED;
  const { value: inner, how } = value as { value?: unknown; how?: unknown };
  const known = (HOW_KNOWN as readonly unknown[]).includes(how);
  return known && inner !== undefined && inner !== null ? (value as Reading) : MALFORMED;
}
