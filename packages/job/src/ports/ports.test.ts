import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Digest, digestAcceptance } from './digest.ts';
import { type Ids, idsAcceptance } from './ids.ts';
import { MemoryStorage } from './memory-storage.ts';
import { sha256 } from './sha256.ts';
import { storageAcceptance } from './storage-acceptance.ts';
import { utf8 } from './utf8.ts';

describe('memory storage', () => {
  for (const { name, run } of storageAcceptance) it(name, () => run(new MemoryStorage()));
});

describe('SHA-256 in plain arithmetic', () => {
  for (const { name, run } of digestAcceptance) it(name, () => run(sha256));

  it("agrees with the platform's own for any text", async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 300 }), async (text) => {
        const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
        expect(sha256.fingerprint(text)).toBe(Buffer.from(digest).toString('hex'));
      }),
    );
  });
});

describe('UTF-8', () => {
  it("agrees with the platform's own, lone surrogates included", () => {
    const unit = fc.integer({ min: 0, max: 0xffff }).map((code) => String.fromCharCode(code));
    fc.assert(
      fc.property(fc.array(unit), (units) => {
        const text = units.join('');
        expect([...utf8(text)]).toEqual([...new TextEncoder().encode(text)]);
      }),
    );
  });
});

describe('the acceptance tests', () => {
  it('pass a source of ids that keeps its promise and no other', () => {
    let n = 0;
    const good: Ids = { next: () => `x${++n}` };
    for (const { run } of idsAcceptance) run(good);
    expect(() => idsAcceptance[0]!.run({ next: () => 'a b' })).toThrow('unfit id a b');
    expect(() => idsAcceptance[1]!.run({ next: () => 'a' })).toThrow('only 1 different ids');
  });

  it('fail a digest that is none', () => {
    const bad: Digest = { fingerprint: (text) => text };
    for (const { run } of digestAcceptance) expect(() => run(bad)).toThrow('instead of');
  });

  it('fail a storage that breaks a promise', async () => {
    class Forgetful extends MemoryStorage {
      override async read() {
        return [];
      }
    }
    class Careless extends MemoryStorage {
      override append: MemoryStorage['append'] = async (at, write) => {
        const written = write({ seq: 0, hlc: '000000000000000-00000' });
        await this.take(at.doc, written);
        return written;
      };
    }
    for (const broken of [Forgetful, Careless]) {
      const outcomes = await Promise.all(
        storageAcceptance.map(async ({ run }) => {
          try {
            await run(new broken());
            return true;
          } catch {
            return false;
          }
        }),
      );
      expect(outcomes).toContain(false);
    }
  });
});
