import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyDevices, Device, documentText, everything, textOf } from './testing/devices.ts';
import { unite } from './union.ts';
import { missingFrom, vectorText, versionVector } from './version-vector.ts';

describe('devices that exchange their logs', () => {
  it('[L51] show the same document once everything has reached everybody, by any route', () => {
    fc.assert(
      fc.property(anyDevices, fc.boolean(), (devices, ring) => {
        const all = everything(devices);
        if (ring) {
          // Twice round the ring, each telling only its neighbour.
          for (let i = 0; i < devices.length * 2; i++) {
            devices[(i + 1) % devices.length]!.receive(devices[i % devices.length]!.operations);
          }
        } else for (const device of devices) device.receive([...all].reverse());
        const texts = new Set(devices.map((device) => documentText(device.document)));
        expect(texts).toEqual(new Set([textOf(all)]));
      }),
      { numRuns: 150 },
    );
  });

  it('[L52] need only what the version vector says is missing', () => {
    fc.assert(
      fc.property(anyDevices, (devices) => {
        const [a, b] = [devices[0]!, devices[1]!];
        const needed = missingFrom(versionVector(b.operations), a.operations);
        expect(unite(b.operations, needed)).toEqual(unite(a.operations, b.operations));
        const had = new Set(b.operations.map((operation) => operation.id));
        expect(needed.some((operation) => had.has(operation.id))).toBe(false);
      }),
    );
  });

  it('[L24] never see one id with two contents while no replica is cloned', () => {
    fc.assert(
      fc.property(anyDevices, (devices) => {
        const all = everything(devices);
        expect(new Set(all.map((operation) => operation.id)).size).toBe(all.length);
      }),
    );
  });

  it('[L4] leave nothing dangling, cyclic or misplaced behind', () => {
    fc.assert(
      fc.property(anyDevices, (devices) => {
        const device = new Device('reader');
        device.receive(everything(devices));
        const codes = new Set(device.document.findings.map((finding) => finding.code));
        for (const code of [
          'dangling-replaces',
          'cycle-in-replaces',
          'replaces-elsewhere',
          'incomplete-group',
        ]) {
          expect(codes).not.toContain(code);
        }
      }),
    );
  });
});

describe('a union of logs', () => {
  it('[L50] is commutative, associative and idempotent, and loses nothing', () => {
    fc.assert(
      fc.property(anyDevices, (devices) => {
        const [a, b, c] = [devices[0]!, devices[1]!, devices.at(-1)!].map((device) => device.operations);
        const all = unite(a!, b!, c!);
        expect(unite(c!, unite(b!, a!))).toEqual(all);
        expect(unite(unite(a!, b!), c!)).toEqual(all);
        expect(unite(all, all)).toEqual(all);
        for (const operation of [...a!, ...b!, ...c!]) expect(all).toContainEqual(operation);
      }),
    );
  });
});

describe('a version vector', () => {
  it('[L52] tells runs and gaps', () => {
    const ids = ['b:2', 'a:1', 'a:3', 'a:2', 'a:7', 'b:1', 'a:9', 'a:8'];
    const vector = versionVector(ids.map((id) => ({ v: 9, id })));
    expect(vectorText(vector)).toBe('a:1-3,7-9 b:1-2');
    const offered = ['a:3', 'a:4', 'a:9', 'a:10', 'b:1', 'c:1'].map((id) => ({ v: 9, id }));
    expect(missingFrom(vector, offered).map(({ id }) => id)).toEqual(['a:4', 'a:10', 'c:1']);
  });
});
