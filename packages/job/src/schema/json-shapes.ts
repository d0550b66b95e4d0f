/** The shape of a job file, made from the same declarations that judge it. */
import * as z from 'zod/mini';
import type { Field } from './field.ts';
import { HOW_KNOWN } from './field.ts';
import type { RecordSpec } from './record.ts';
import { RECORDS } from './records.ts';

z.config({ jitless: true });

/** The shape of what a field's reading holds in `value`. */
function valueShape(field: Field): z.ZodMiniType {
  switch (field.type) {
    case 'quantity':
      return z.number();
    case 'choice':
      return z.enum(field.choices as [string, ...string[]]);
    case 'curve':
      return z.array(z.tuple([z.number(), z.number()]));
    case 'counts':
      return z.partialRecord(z.enum(field.of as [string, ...string[]]), z.number());
    case 'substitute':
      return z.unknown();
    default:
      return z.string();
  }
}

function readingShape(field: Field): z.ZodMiniType {
  return z.object({
    value: valueShape(field),
    unit: z.optional(z.string()),
    how: z.enum(HOW_KNOWN),
    by: z.optional(z.string()),
    at: z.optional(z.string()),
    instrument: z.optional(z.string()),
    pm: z.optional(z.number()),
    typed: z.optional(z.string()),
    note: z.optional(z.string()),
  });
}

function recordShape({ fields, single }: RecordSpec): z.ZodMiniType {
  const shape: Record<string, z.ZodMiniType> = {};
  for (const [name, field] of Object.entries(fields)) shape[name] = z.optional(readingShape(field));
  return single ? z.looseObject(shape) : z.array(z.looseObject({ id: z.string(), ...shape }));
}

const operation = z.looseObject({
  v: z.number(),
  doc: z.string(),
  id: z.string(),
  hlc: z.string(),
  author: z.string(),
  kind: z.string(),
  target: z.string(),
  value: z.unknown(),
  replaces: z.array(z.string()),
  group: z.string(),
});

/** The schema as plain JSON, draft 2020-12. */
export function jobFileShape(): object {
  const document: Record<string, z.ZodMiniType> = {};
  for (const spec of RECORDS) document[spec.collection] = z.optional(recordShape(spec));
  const file = z.object({
    format: z.literal('firstfire-job'),
    version: z.number(),
    document: z.looseObject(document),
    log: z.array(operation),
  });
  return z.toJSONSchema(file);
}
