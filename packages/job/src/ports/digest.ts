/** Fingerprints: SHA-256, synchronous, so that one can be taken inside a storage transaction. */
import { type AcceptanceCase, expectHeld } from './acceptance.ts';

export interface Digest {
  /** SHA-256 of the text's UTF-8 bytes, 64 lower-case hexadecimal digits. */
  fingerprint(text: string): string;
}

/**
 * Source of the digests: NIST, SHA-256 example computations and CAVP short messages (one block, two blocks, empty, a
 * million times `a`); the text beyond ASCII is checked against the platform's own SHA-256 by whoever has one.
 */
const KNOWN: readonly (readonly [string, string, string])[] = [
  ['of nothing', '', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['of one block', 'abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'of two blocks',
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  [
    'of a million characters',
    'a'.repeat(1_000_000),
    'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0',
  ],
];

export const digestAcceptance: readonly AcceptanceCase<Digest>[] = KNOWN.map(([name, text, expected]) => ({
  name: `takes the fingerprint ${name}`,
  run(digest) {
    const found = digest.fingerprint(text);
    expectHeld(found === expected, `${found} instead of ${expected}`);
  },
}));
