import { describe, expect, it } from 'vitest';
import { sha256 } from '../ports/sha256.ts';
import { appendRecord, type NewEntry, verifyRecords } from './chain.ts';
import type { Operation } from './envelope.ts';
import { fold } from './fold.ts';
import type { Json } from './json.ts';
import { documentView } from './plain.ts';
import { Device, DOC } from './testing/devices.ts';
import { operation, remove } from './testing/make.ts';

const ENTRY: NewEntry = {
  record: 'startup',
  entry: { manifold: '3.5 inwc' },
  program: '0.1.0',
  edition: 'IFGC 2018',
};

function append(device: Device, entry: Json): Operation {
  const result = appendRecord(device.document, { ...ENTRY, entry }, { ...device.writer, digest: sha256 });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  device.receive(result.operations);
  return result.operations[0]!;
}

function startup(device: Device) {
  return device.document.records.get('startup') ?? [];
}

function codes(operations: readonly Operation[]): string[] {
  const document = fold(operations, DOC);
  return [...document.findings, ...verifyRecords(document, sha256)].map((finding) => finding.code);
}

describe('a record', () => {
  it('[L71] names in each entry the one before, the program and the code edition', () => {
    const device = new Device('d1');
    for (const entry of [1, 2, 3]) append(device, entry);
    const [first, second, third] = startup(device);
    expect(first).toMatchObject({
      previous: [],
      program: '0.1.0',
      edition: 'IFGC 2018',
      entry: 1,
      id: 'd1:1',
    });
    expect(second?.previous).toEqual([first?.fingerprint]);
    expect(third?.previous).toEqual([second?.fingerprint]);
    expect(first?.fingerprint).toMatch(/^[0-9a-f]{64}$/);
    expect(verifyRecords(device.document, sha256)).toEqual([]);
    expect(documentView(device.document)).toMatchObject({
      records: { startup: [{ entry: 1 }, { entry: 2 }, { entry: 3 }] },
    });
  });

  it('[L70] loses no entry to anything', () => {
    const device = new Device('d1');
    const entry = append(device, 1);
    device.receive([
      remove('s:1', [entry.id], { target: 'records/startup' }),
      operation('s:2', {
        kind: 'record.append',
        target: 'records/startup',
        value: entry.value,
        replaces: [entry.id],
      }),
    ]);
    expect(startup(device).map(({ id }) => id)).toContain(entry.id);
    expect(device.document.findings.map((finding) => finding.code)).toContain('bad-operation');
  });

  it('[L72] shows an entry altered afterwards in anything it says', () => {
    const device = new Device('d1');
    const entries = [1, 2].map((entry) => append(device, entry));
    expect(codes(entries)).toEqual([]);
    const value = entries[0]!.value as { readonly [member: string]: Json };
    const altered: Partial<Operation>[] = [
      { author: 'somebody else' },
      { hlc: '000000000000001-00000' },
      { value: { ...value, entry: 'better' } },
      { value: { ...value, program: '9.9.9' } },
      { value: { ...value, edition: 'IFGC 2030' } },
    ];
    for (const change of altered)
      expect(codes([{ ...entries[0]!, ...change }, entries[1]!])).toEqual(['record-altered']);
    const renamed = { ...value, fingerprint: 'f'.repeat(64) };
    expect(codes([{ ...entries[0]!, value: renamed }, entries[1]!])).toContain('record-gap');
  });

  it('[L72] shows an entry that is missing', () => {
    const device = new Device('d1');
    const entries = [1, 2, 3].map((entry) => append(device, entry));
    expect(codes([entries[0]!, entries[2]!])).toEqual(['record-forked', 'record-gap']);
    expect(codes(entries.slice(1))).toEqual(['record-gap']);
  });

  it('[L73] keeps both branches, and joins them when an entry names both ends', () => {
    const [a, b] = [new Device('a'), new Device('b', -60_000)];
    const first = append(a, 'first');
    b.receive([first]);
    append(a, 'a1');
    append(b, 'b1');
    append(a, 'a2');
    a.receive(b.operations);
    expect(a.document.findings.map((finding) => finding.code)).toEqual(['record-forked']);
    expect(new Set(startup(a).map((entry) => entry.entry))).toEqual(new Set(['first', 'a1', 'a2', 'b1']));
    const joint = append(a, 'joint');
    expect((joint.value as { previous?: unknown }).previous).toHaveLength(2);
    expect(a.document.findings).toEqual([]);
    const order = startup(a).map((entry) => entry.entry);
    expect([order[0], order.at(-1)]).toEqual(['first', 'joint']);
    expect(order.indexOf('a1')).toBeLessThan(order.indexOf('a2'));
    b.receive(a.operations);
    expect(startup(b)).toEqual(startup(a));
  });

  it('[L71] stands in the order its entries name, whatever their clocks say', () => {
    const [ahead, behind] = [new Device('a', 3_600_000), new Device('b')];
    const first = append(ahead, 'first');
    behind.receive([first]);
    const second = append(behind, 'second');
    expect(second.hlc < first.hlc).toBe(true);
    append(behind, 'third');
    expect(startup(behind).map((entry) => entry.entry)).toEqual(['first', 'second', 'third']);
    expect(behind.document.findings).toEqual([]);
  });

  it('[L20] bears entries that name each other in a circle', () => {
    const entry = (id: string, fingerprint: string, previous: string) =>
      operation(id, {
        kind: 'record.append',
        target: 'records/startup',
        value: { previous: [previous], fingerprint, program: '1', edition: '1', entry: id },
      });
    const document = fold([entry('r:1', 'x', 'y'), entry('r:2', 'y', 'x')], DOC);
    expect(document.records.get('startup')?.length).toBe(2);
    expect(verifyRecords(document, sha256).length).toBe(2);
  });

  it('refuses what it cannot hold', () => {
    const { document, writer } = new Device('d1');
    const at = { ...writer, digest: sha256 };
    expect(appendRecord(document, { ...ENTRY, record: '-' }, at)).toMatchObject({
      issues: [{ code: 'bad-name' }],
    });
    expect(appendRecord(document, { ...ENTRY, entry: Number.NaN }, at)).toMatchObject({
      issues: [{ code: 'not-json' }],
    });
    expect(appendRecord(document, { ...ENTRY, program: '' }, at).ok).toBe(false);
    expect(appendRecord(document, ENTRY, { ...at, doc: 'doc-2' })).toMatchObject({
      issues: [{ code: 'other-document' }],
    });
  });
});
