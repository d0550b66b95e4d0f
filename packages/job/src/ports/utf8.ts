/**
 * The UTF-8 bytes of a text. A lone surrogate becomes U+FFFD, as everywhere else.
 * Source: RFC 3629, section 3; WHATWG Encoding Standard for the lone surrogate.
 */
export function utf8(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length * 3);
  let length = 0;
  for (const character of text) {
    const point = character.codePointAt(0)!;
    const code = point >= 0xd800 && point <= 0xdfff ? 0xfffd : point;
    for (const byte of bytesOf(code)) bytes[length++] = byte;
  }
  return bytes.slice(0, length);
}

function bytesOf(code: number): number[] {
  const tail = (shift: number) => 0x80 | ((code >> shift) & 0x3f);
  if (code < 0x80) return [code];
  if (code < 0x800) return [0xc0 | (code >> 6), tail(0)];
  if (code < 0x1_0000) return [0xe0 | (code >> 12), tail(6), tail(0)];
  return [0xf0 | (code >> 18), tail(12), tail(6), tail(0)];
}
