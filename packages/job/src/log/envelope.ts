/**
 * The operation: one immutable step of a job, in the envelope every device and every later version keeps.
 *
 * `replaces` names the operations the writer saw on this target when writing. That, not a clock, tells an overwrite
 * from a conflict.
 */
import type { Json, JsonObject } from './json.ts';

/** The version of the envelope written today. Older ones are upcast on reading: see `migrations.ts`. */
export const OPERATION_VERSION = 1;

export const OPERATION_KINDS = [
  /** The document begins. Target `job/-`; value: anything worth saying about its making. */
  'job.create',
  /** An element appears, or comes back after a removal. Value `{ order }`. */
  'element.add',
  /** An element goes, as far as the writer saw it: `replaces` names all heads of the element. Value null. */
  'element.remove',
  /** An element takes another place among its siblings. Value `{ order }`. */
  'element.move',
  /** A field takes a value; null takes it back to not known. */
  'field.set',
  /** An entry at the end of a record that only grows. Target `records/NAME`; value: see `chain.ts`. */
  'record.append',
] as const;

export type OperationKind = (typeof OPERATION_KINDS)[number];

export interface Operation {
  readonly v: typeof OPERATION_VERSION;
  /** The document it belongs to. */
  readonly doc: string;
  /** `replica:seq`. */
  readonly id: string;
  /** Hybrid logical clock. */
  readonly hlc: string;
  readonly author: string;
  /** One of `OPERATION_KINDS`, or a later one, which is kept and passed on unapplied. */
  readonly kind: string;
  readonly target: string;
  readonly value: Json;
  /** Ids seen. */
  readonly replaces: readonly string[];
  /** `replica:first+count`: the edits that stand or fall together. */
  readonly group: string;
}

/**
 * An operation as it lies in a log: today's, an older one, or a newer one of which only version and id are known.
 * The stored form is what is written back and compared, so that nothing an operation said is ever rewritten.
 */
export type StoredOperation = Operation | OpaqueOperation;

export interface OpaqueOperation extends JsonObject {
  readonly v: number;
  readonly id: string;
}

export interface ElementValue {
  /** Fractional order: see `order-key.ts`. */
  readonly order: string;
}

/** The members of an envelope in the order they are written. */
export const ENVELOPE_MEMBERS = [
  'v',
  'doc',
  'id',
  'hlc',
  'author',
  'kind',
  'target',
  'value',
  'replaces',
  'group',
] as const;

export function isKnownKind(kind: string): kind is OperationKind {
  return (OPERATION_KINDS as readonly string[]).includes(kind);
}
