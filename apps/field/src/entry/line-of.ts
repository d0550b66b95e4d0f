/** The line a reading belongs to: the first whose findings stand on it, else the first whose readings it is among. */
import type { Study } from '@firstfire/job';
import { COLLECTIONS_OF } from '../next/collections.ts';
import type { FieldAt } from './understood.ts';

export function lineOf({ lines }: Study, { collection, id, field }: FieldAt): string | undefined {
  const path = `${collection}/${id}/${field}`;
  const asking = lines.find(({ findings }) =>
    findings.some(({ missing, assumed }) => missing.includes(path) || assumed.includes(path)),
  );
  return asking?.line ?? Object.entries(COLLECTIONS_OF).find(([, of]) => of.includes(collection))?.[0];
}
