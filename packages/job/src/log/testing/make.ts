/** For tests: single operations written by hand. */
import type { Operation } from '../envelope.ts';
import { formatHlc } from '../hlc.ts';
import { DOC } from './devices.ts';

type Free = Partial<Operation> & { readonly at?: number };

/** An operation with everything but what the test is about filled in; `at` is the count of its clock. */
export function operation(id: string, { at = 0, ...more }: Free): Operation {
  const common = { v: 1, doc: DOC, id, hlc: formatHlc(1000, at), author: 'ann' } as const;
  return {
    ...common,
    kind: 'field.set',
    target: 'pipes/a/x',
    value: 1,
    replaces: [],
    group: `${id}+1`,
    ...more,
  };
}

export function set(id: string, value: Operation['value'], more: Free = {}): Operation {
  return operation(id, { value, ...more });
}

export function add(id: string, more: Free = {}): Operation {
  return operation(id, { kind: 'element.add', target: 'pipes/a', value: { order: 'V' }, ...more });
}

export function remove(id: string, replaces: readonly string[], more: Free = {}): Operation {
  return operation(id, { kind: 'element.remove', target: 'pipes/a', value: null, replaces, ...more });
}
