/** For tests: devices that edit one document and exchange their logs. */
import fc from 'fast-check';
import type { FoldedDocument } from '../document.ts';
import type { Operation, StoredOperation } from '../envelope.ts';
import { Folding, fold } from '../fold.ts';
import { canonicalJson } from '../json.ts';
import type { Writer } from '../pen.ts';
import { packDocument } from '../snapshot.ts';
import { unite } from '../union.ts';
import { type Edit, writeGroup } from '../writer.ts';

export const DOC = 'doc-1';
export const NOW = 1_764_061_234_567;

/** Everything a document says, as one text. */
export function documentText(document: FoldedDocument): string {
  return canonicalJson(packDocument(document));
}

export function writerOf(replica: string, more: Partial<Writer> = {}): Writer {
  return { doc: DOC, replica, author: `author-of-${replica}`, now: NOW, ...more };
}

/** One device: its own log, its own clock. */
export class Device {
  readonly folding = new Folding(DOC);
  readonly writer: Writer;
  operations: StoredOperation[] = [];

  constructor(replica: string, clockOffset = 0) {
    this.writer = writerOf(replica, { now: NOW + clockOffset });
  }

  get document(): FoldedDocument {
    return this.folding.document();
  }

  receive(operations: readonly StoredOperation[]): void {
    this.operations = unite(this.operations, operations);
    this.folding.take(operations);
  }

  /** Writes a group if it is allowed; returns what was written. */
  edit(...edits: readonly Edit[]): readonly Operation[] {
    const result = writeGroup(this.document, edits, this.writer);
    if (!result.ok) return [];
    this.receive(result.operations);
    return result.operations;
  }
}

const collection = fc.constant('pipes');
const element = fc.constantFrom('a', 'b', 'c');
const field = fc.constantFrom('length', 'length', 'size');
const value = fc.constantFrom(null, 1, 2, '3/4 in', { value: 20, unit: 'ft', how: 'measured' });
const after = fc.constantFrom(null, 'a', 'b', 'c');

const onElement = { collection, element };

/** An edit somewhere in a small document, so that edits meet. */
export const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 5, arbitrary: fc.record({ type: fc.constant('set' as const), ...onElement, field, value }) },
  fc.record({ type: fc.constant('set' as const), collection: fc.constant('site'), field, value }),
  fc.record({ type: fc.constant('add' as const), ...onElement }),
  fc.record({ type: fc.constant('add' as const), ...onElement, after }),
  fc.record({ type: fc.constant('move' as const), ...onElement, after }),
  { weight: 2, arbitrary: fc.record({ type: fc.constant('remove' as const), ...onElement }) },
  { weight: 2, arbitrary: fc.record({ type: fc.constant('restore' as const), ...onElement }) },
);

export const anyGroup = fc.array(anyEdit, { minLength: 1, maxLength: 3, size: 'max' });

/** What all devices have before they part: something to meet on. */
export const START: readonly Edit[] = [
  { type: 'create' },
  ...['a', 'b'].map((id): Edit => ({ type: 'add', collection: 'pipes', element: id })),
  { type: 'set', collection: 'pipes', element: 'a', field: 'length', value: 0 },
];

type Act =
  | { readonly act: 'edit'; readonly device: number; readonly edits: readonly Edit[] }
  | { readonly act: 'send'; readonly from: number; readonly to: number; readonly part: number };

const index = fc.nat(4);
const anyAct: fc.Arbitrary<Act> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ act: fc.constant('edit' as const), device: index, edits: anyGroup }) },
  {
    weight: 1,
    arbitrary: fc.record({ act: fc.constant('send' as const), from: index, to: index, part: fc.nat(3) }),
  },
);

/** Two to five devices after a while of editing and of exchanging all or parts of their logs. */
export const anyDevices: fc.Arbitrary<Device[]> = fc
  .record({
    count: fc.integer({ min: 2, max: 5 }),
    offsets: fc.array(fc.integer({ min: -600_000, max: 600_000 }), { minLength: 5, maxLength: 5 }),
    acts: fc.array(anyAct, { minLength: 1, maxLength: 30, size: 'max' }),
  })
  .map(({ count, offsets, acts }) => {
    const devices = Array.from({ length: count }, (_, i) => new Device(`d${i}`, offsets[i]));
    const start = devices[0]!.edit(...START);
    for (const device of devices) device.receive(start);
    for (const act of acts) perform(act, devices);
    return devices;
  });

function perform(act: Act, devices: readonly Device[]): void {
  const pick = (i: number) => devices[i % devices.length]!;
  if (act.act === 'edit') pick(act.device).edit(...act.edits);
  else {
    const { operations } = pick(act.from);
    // Every part but the last leaves something out: what arrives may lack what it replaces.
    pick(act.to).receive(operations.filter((_, i) => act.part === 3 || i % 3 === act.part));
  }
}

/** The whole log of all devices, in canonical order. */
export function everything(devices: readonly Device[]): StoredOperation[] {
  return unite(...devices.map((device) => device.operations));
}

export function textOf(operations: readonly StoredOperation[]): string {
  return documentText(fold(operations, DOC));
}
