/**
 * SHA-256 in plain arithmetic. A browser offers its own only on secure pages and only asynchronously, which rules it
 * out on a van's local network and inside a storage transaction.
 *
 * Source: FIPS 180-4, sections 4.1.2, 4.2.2, 5.1.1, 5.3.3 and 6.2. The constants are made, as the standard defines
 * them, from the fractional parts of the roots of the first primes.
 */
import type { Digest } from './digest.ts';
import { utf8 } from './utf8.ts';

const PRIMES = firstPrimes(64);
/** Section 4.2.2: first 32 bits of the fractional parts of the cube roots of the first 64 primes. */
const K = PRIMES.map((prime) => fractionBits(Math.cbrt(prime)));
/** Section 5.3.3: the same of the square roots of the first 8. */
const INITIAL = PRIMES.slice(0, 8).map((prime) => fractionBits(Math.sqrt(prime)));

export const sha256: Digest = {
  fingerprint(text) {
    const state = Int32Array.from(INITIAL);
    const words = new Int32Array(64);
    const bytes = padded(utf8(text));
    const view = new DataView(bytes.buffer);
    for (let at = 0; at < bytes.length; at += 64) {
      for (let t = 0; t < 16; t++) words[t] = view.getInt32(at + 4 * t);
      digestBlock(state, words);
    }
    return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
  },
};

/** Section 5.1.1: a one bit, zeros, and the length in bits as 64 bits, to a multiple of 64 bytes. */
function padded(message: Uint8Array): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(Math.ceil((message.length + 9) / 64) * 64);
  bytes.set(message);
  bytes[message.length] = 0x80;
  new DataView(bytes.buffer).setBigUint64(bytes.length - 8, BigInt(message.length) * 8n);
  return bytes;
}

/** Section 6.2.2, for one block whose first 16 words are filled in. */
function digestBlock(state: Int32Array, w: Int32Array): void {
  for (let t = 16; t < 64; t++) {
    w[t] = (sigma1(w[t - 2]!) + w[t - 7]! + sigma0(w[t - 15]!) + w[t - 16]!) | 0;
  }
  let [a, b, c, d, e, f, g, h] = state as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  for (let t = 0; t < 64; t++) {
    const t1 = (h + sum1(e) + ((e & f) ^ (~e & g)) + K[t]! + w[t]!) | 0;
    const t2 = (sum0(a) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + t1) | 0, c, b, a, (t1 + t2) | 0];
  }
  const worked = [a, b, c, d, e, f, g, h];
  for (let i = 0; i < 8; i++) state[i] = (state[i]! + worked[i]!) | 0;
}

function rotate(x: number, n: number): number {
  return (x >>> n) | (x << (32 - n));
}

// The four functions of section 4.1.2 that mix one word.
const sum0 = (x: number) => rotate(x, 2) ^ rotate(x, 13) ^ rotate(x, 22);
const sum1 = (x: number) => rotate(x, 6) ^ rotate(x, 11) ^ rotate(x, 25);
const sigma0 = (x: number) => rotate(x, 7) ^ rotate(x, 18) ^ (x >>> 3);
const sigma1 = (x: number) => rotate(x, 17) ^ rotate(x, 19) ^ (x >>> 10);

function fractionBits(root: number): number {
  return Math.floor((root - Math.floor(root)) * 2 ** 32) | 0;
}

function firstPrimes(count: number): number[] {
  const primes: number[] = [];
  for (let n = 2; primes.length < count; n++) if (primes.every((prime) => n % prime !== 0)) primes.push(n);
  return primes;
}
