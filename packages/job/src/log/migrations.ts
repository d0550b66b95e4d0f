/**
 * Older operations, brought to today's envelope on reading. The stored operation stays as it was written.
 *
 * Version 0 (before operations were grouped and before a writer could have seen more than one value):
 * - `previous: id | null` instead of `replaces: id[]`
 * - no `group`: each operation stood alone
 *
 * A step, once released, never changes; a new version adds a step below. Every step is exercised by a test that
 * opens an operation of that version.
 */
import { OPERATION_VERSION } from './envelope.ts';

type Raw = { readonly [member: string]: unknown };

const STEPS: readonly ((raw: Raw) => Raw)[] = [fromVersion0];

/** The operation in today's members, not yet checked; its version must be an integer from 0 to today's. */
export function upcast(raw: Raw, version: number): Raw {
  let current = raw;
  for (let v = version; v < OPERATION_VERSION; v++) {
    const step = STEPS[v];
    if (!step) throw new Error(`no migration from operation version ${v}`);
    current = step(current);
  }
  return current;
}

function fromVersion0(raw: Raw): Raw {
  const { previous, ...rest } = raw;
  return { ...rest, v: 1, replaces: previous === null ? [] : [previous], group: `${String(raw['id'])}+1` };
}
