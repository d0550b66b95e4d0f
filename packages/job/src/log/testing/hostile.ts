/** For tests: operations nobody would write, that a fold has to bear all the same. */
import fc from 'fast-check';
import { OPERATION_KINDS, type StoredOperation } from '../envelope.ts';
import { formatHlc } from '../hlc.ts';
import { DOC } from './devices.ts';

const seq = fc.integer({ min: 1, max: 8 });
const id = fc.tuple(fc.constantFrom('r', 's'), seq).map(([replica, n]) => `${replica}:${n}`);
const value = fc.constantFrom(null, 1, 'x', { order: 'V' }, { order: 'k' });
const target = fc.constantFrom(
  'pipes/a',
  'pipes/a/x',
  'pipes/b',
  'pipes/b/x',
  'site/-/x',
  'job/-',
  'records/startup',
);

/** Well-formed operations with ids, targets, groups and `replaces` thrown together: clones, cycles, dangling ends. */
const tangled: fc.Arbitrary<StoredOperation> = fc
  .record({
    id,
    n: fc.nat(5),
    kind: fc.constantFrom(...OPERATION_KINDS, 'pipe.split'),
    target,
    value,
    replaces: fc.array(id, { maxLength: 4, size: 'max' }),
    before: fc.constantFrom(0, 0, 0, 1),
    behind: fc.constantFrom(0, 0, 0, 1),
    doc: fc.constantFrom(...Array<string>(12).fill(DOC), 'doc-2'),
  })
  .map(({ id: own, n, before, behind, ...rest }) => {
    const [replica, s] = own.split(':');
    const first = Math.max(Number(s) - before, 1);
    const count = Number(s) - first + 1 + behind;
    return {
      v: 1,
      id: own,
      hlc: formatHlc(n, 0),
      author: 'ann',
      group: `${replica}:${first}+${count}`,
      ...rest,
    };
  });

/** Operations of a kind that goes with their target, so that most of them are applied. */
const plausible: fc.Arbitrary<StoredOperation> = tangled.map((operation) => {
  const at = String((operation as { target?: unknown }).target);
  const place = { kind: 'element.add', value: { order: 'V' } };
  const kind = (operation as { kind?: unknown }).kind;
  if (at.split('/').length === 3) return { ...operation, kind: 'field.set' } as StoredOperation;
  if (!at.startsWith('pipes')) return operation;
  return { ...operation, ...(kind === 'element.remove' ? { value: null } : place) } as StoredOperation;
});

const newer: fc.Arbitrary<StoredOperation> = fc.record({
  v: fc.integer({ min: 2, max: 3 }),
  id,
  what: fc.string(),
  also: fc.nat(3),
});

/** Anything at all, of the right type only by assertion. */
const rubbish = fc.oneof(
  fc.jsonValue(),
  fc.dictionary(fc.constantFrom('v', 'id', 'doc', 'hlc', 'replaces', 'value'), fc.jsonValue()),
) as unknown as fc.Arbitrary<StoredOperation>;

export const hostileLog: fc.Arbitrary<StoredOperation[]> = fc.array(
  fc.oneof(
    { weight: 14, arbitrary: plausible },
    { weight: 2, arbitrary: tangled },
    { weight: 1, arbitrary: newer },
    { weight: 1, arbitrary: rubbish },
  ),
  { maxLength: 25, size: 'max' },
);
