import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sha256 } from '../ports/sha256.ts';
import { fold } from './fold.ts';
import { openSnapshot, snapshotKey, takeSnapshot } from './snapshot.ts';
import { anyDevices, DOC, documentText, everything } from './testing/devices.ts';
import { add, set } from './testing/make.ts';

describe('a snapshot', () => {
  it('[L53] opens as the document it was taken of', () => {
    fc.assert(
      fc.property(anyDevices, (devices) => {
        const document = fold(everything(devices), DOC);
        const snapshot = JSON.parse(JSON.stringify(takeSnapshot(document, sha256))) as unknown;
        const opened = openSnapshot(snapshot, snapshotKey(DOC, document.replicas), sha256);
        expect(opened && documentText(opened)).toBe(documentText(document));
        expect(opened).toEqual(document);
      }),
      { numRuns: 30 },
    );
  });

  it('[L53] is thrown away under another key, altered, or of another form', () => {
    const document = fold([add('r:1'), set('r:2', 1)], DOC);
    const snapshot = takeSnapshot(document, sha256)!;
    const key = snapshotKey(DOC, document.replicas);
    expect(openSnapshot(snapshot, key, sha256)).toBeDefined();
    const later = fold([add('r:1'), set('r:2', 1), set('r:3', 2)], DOC);
    expect(openSnapshot(snapshot, snapshotKey(DOC, later.replicas), sha256)).toBeUndefined();
    expect(openSnapshot(snapshot, undefined, sha256)).toBeUndefined();
    expect(
      openSnapshot({ ...snapshot, key: snapshot.key.replace('fold 1', 'fold 0') }, key, sha256),
    ).toBeUndefined();
    expect(
      openSnapshot({ ...snapshot, body: snapshot.body.replace('"value":1', '"value":2') }, key, sha256),
    ).toBeUndefined();
    for (const other of [null, 'x', [], {}, { ...snapshot, body: 5 }]) {
      expect(openSnapshot(other, key, sha256)).toBeUndefined();
    }
  });

  it('[L53] is not taken where the key would not tell which operations were folded', () => {
    expect(takeSnapshot(fold([add('r:1'), set('r:3', 1)], DOC), sha256)).toBeUndefined();
    expect(takeSnapshot(fold([add('r:1'), set('r:2', 1), set('r:2', 2)], DOC), sha256)).toBeUndefined();
    expect(snapshotKey(DOC, new Map([['r', { last: 3, count: 2 }]]))).toBeUndefined();
  });
});
