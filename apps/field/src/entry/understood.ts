/** What a typed text means for a field: a reading, or what would be right. */
import { type Issue, quantity } from '@firstfire/engine';
import type { HowKnown, Reading } from '@firstfire/job';
import { RECORD_BY_COLLECTION } from '@firstfire/job';

export interface FieldAt {
  readonly collection: string;
  readonly id: string;
  readonly field: string;
}

export type Understood =
  | { readonly state: 'empty' }
  | {
      readonly state: 'read';
      readonly reading: Pick<Reading, 'value' | 'unit' | 'typed'>;
      readonly si?: number;
    }
  | { readonly state: 'odd'; readonly issues: readonly Issue[] };

export function fieldOf({ collection, field }: FieldAt) {
  return RECORD_BY_COLLECTION.get(collection)?.fields[field];
}

/** Reads a quantity as typed, with or without a unit; a bare number is in the unit given. */
export function understand(typed: string, kind: quantity.Kind, unit: string): Understood {
  const text = typed.trim();
  if (text === '') return { state: 'empty' };
  const parsed = quantity.parseQuantity(text, kind, { defaultUnit: unit });
  if (!parsed.ok) return { state: 'odd', issues: parsed.issues };
  const { value, unit: read, si } = parsed.value;
  const plain = `${value} ${read}`;
  return {
    state: 'read',
    si,
    reading: { value, unit: read, ...(text === plain || text === String(value) ? {} : { typed: text }) },
  };
}

export const HOW: readonly HowKnown[] = ['measured', 'nameplate', 'drawing', 'told', 'assumed'];
