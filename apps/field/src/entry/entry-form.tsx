/** The way of entering that a field's declaration asks for. */
import type { RECORD_BY_COLLECTION } from '@firstfire/job';
import type { ReactNode } from 'react';
import { ChoiceEntry } from './choice-entry.tsx';
import { CountsEntry } from './counts-entry.tsx';
import { CurveEntry } from './curve-entry.tsx';
import type { EntryForm as Form } from './form.ts';
import { PointEntry } from './point-entry.tsx';
import { type Measured, QuantityEntry } from './quantity-entry.tsx';
import { SizeEntry } from './size-entry.tsx';
import { TextEntry } from './text-entry.tsx';

type Records = typeof RECORD_BY_COLLECTION;
export type Spec = NonNullable<ReturnType<Records['get']>>['fields'][string];

export interface EntryFormProps extends Omit<Form, 'row'> {
  readonly spec: Spec;
  readonly doc: string;
  readonly offered: string | undefined;
  readonly row: (measured?: Measured) => ReactNode;
}

export function EntryForm({ spec, doc, offered, row, ...form }: EntryFormProps) {
  const { collection, id, field } = form.at;
  const plain = { ...form, row: row() };
  switch (spec.type) {
    case 'quantity':
      return (
        <QuantityEntry
          {...form}
          draft={`${doc}/${collection}/${id}/${field}`}
          spec={spec}
          medium={mediumOf(collection, field)}
          offered={offered}
          row={row}
        />
      );
    case 'choice':
      return <ChoiceEntry {...plain} choices={spec.choices} />;
    case 'counts':
      return <CountsEntry {...plain} of={spec.of} />;
    case 'curve':
      return <CurveEntry {...plain} kinds={[spec.x, spec.y]} />;
    case 'size':
      return <SizeEntry {...plain} />;
    case 'point':
      return <PointEntry {...plain} />;
    default:
      return <TextEntry {...plain} />;
  }
}

/** Pressures of gas are told in inches of water, those of water in pounds or kilopascals. */
export function mediumOf(collection: string, field: string): 'gas' | 'water' {
  if (/^test/.test(field)) return 'water';
  return collection.startsWith('gas') || /^inlet(Least|Greatest)$/.test(field) ? 'gas' : 'water';
}
