/**
 * Columns of numbers cut from one piece of memory, all zero. A network has some thirty of them, and for a small one
 * asking for each by itself costs more than solving it.
 */
const WORD = 8;

/** See the head of this file. Made with the bytes expected; what goes beyond them gets a piece of its own. */
export class Columns {
  #piece: ArrayBuffer;
  #next = 0;

  constructor(bytes: number) {
    this.#piece = new ArrayBuffer(bytes);
  }

  numbers(count: number): Float64Array {
    const at = this.#take(count * Float64Array.BYTES_PER_ELEMENT);
    return new Float64Array(this.#piece, at, count);
  }

  integers(count: number): Int32Array {
    const at = this.#take(count * Int32Array.BYTES_PER_ELEMENT);
    return new Int32Array(this.#piece, at, count);
  }

  flags(count: number): Uint8Array {
    const at = this.#take(count);
    return new Uint8Array(this.#piece, at, count);
  }

  /** Where the next column begins: on a word, so that any kind of number may stand there. */
  #take(bytes: number): number {
    const whole = WORD * Math.ceil(bytes / WORD);
    if (this.#next + whole > this.#piece.byteLength) {
      this.#piece = new ArrayBuffer(whole);
      this.#next = 0;
    }
    const at = this.#next;
    this.#next += whole;
    return at;
  }
}
