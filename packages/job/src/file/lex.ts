/**
 * The words of JSON: where a string, a number or a literal ends, or where it goes wrong.
 * Plain loops, so that a token of any length costs no stack. Source of the grammar: RFC 8259, sections 3, 6 and 7.
 */
export type Lexed =
  /** `end`: just after the token. */
  | { readonly ok: true; readonly end: number }
  /** `at`: the character that does not belong, or the length of the text where it stops too early. */
  | { readonly ok: false; readonly at: number };

const QUOTE = 0x22;
const BACKSLASH = 0x5c;
const ZERO = 0x30;
const NINE = 0x39;
const ESCAPES = '"\\/bfnrt';
const LITERALS = ['true', 'false', 'null'];

export function skipBlanks(text: string, start: number): number {
  let at = start;
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code !== 0x20 && code !== 0x0a && code !== 0x0d && code !== 0x09) break;
  }
  return at;
}

/** A string whose opening quote stands at `start`. */
export function lexString(text: string, start: number): Lexed {
  for (let at = start + 1; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === QUOTE) return { ok: true, end: at + 1 };
    if (code < 0x20) return { ok: false, at };
    if (code !== BACKSLASH) continue;
    const escaped = lexEscape(text, at + 1);
    if (!escaped.ok) return escaped;
    at = escaped.end - 1;
  }
  return { ok: false, at: text.length };
}

function lexEscape(text: string, at: number): Lexed {
  const character = text[at];
  if (character === undefined) return { ok: false, at: text.length };
  if (ESCAPES.includes(character)) return { ok: true, end: at + 1 };
  if (character !== 'u') return { ok: false, at };
  for (let i = at + 1; i <= at + 4; i++) {
    if (i >= text.length) return { ok: false, at: text.length };
    if (!/[0-9a-fA-F]/.test(text[i]!)) return { ok: false, at: i };
  }
  return { ok: true, end: at + 5 };
}

/** A number whose first character, a digit or a minus, stands at `start`. */
export function lexNumber(text: string, start: number): Lexed {
  let at = text[start] === '-' ? start + 1 : start;
  const whole = text[at] === '0' ? at + 1 : skipDigits(text, at);
  if (whole === at) return { ok: false, at };
  at = whole;
  if (text[at] === '.') {
    const fraction = skipDigits(text, at + 1);
    if (fraction === at + 1) return { ok: false, at: fraction };
    at = fraction;
  }
  if (text[at] !== 'e' && text[at] !== 'E') return { ok: true, end: at };
  const sign = text[at + 1] === '+' || text[at + 1] === '-' ? 2 : 1;
  const exponent = skipDigits(text, at + sign);
  return exponent === at + sign ? { ok: false, at: exponent } : { ok: true, end: exponent };
}

function skipDigits(text: string, start: number): number {
  let at = start;
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < ZERO || code > NINE) break;
  }
  return at;
}

/** `true`, `false` or `null` at `start`. */
export function lexWord(text: string, start: number): Lexed {
  for (const word of LITERALS) {
    if (text[start] !== word[0]) continue;
    for (let i = 1; i < word.length; i++) {
      if (text[start + i] !== word[i]) return { ok: false, at: Math.min(start + i, text.length) };
    }
    return { ok: true, end: start + word.length };
  }
  return { ok: false, at: start };
}

/** Just after the value that begins at `start` of a text known to be JSON. */
export function valueEnd(text: string, start: number): number {
  let depth = 0;
  for (let at = start; at < text.length; at++) {
    const character = text[at];
    if (character === '"') at = endOfString(text, at) - 1;
    else if (character === '{' || character === '[') depth += 1;
    else if (character === '}' || character === ']') depth -= 1;
    // A number or a word alone has no end of its own: what follows it ends it.
    if (depth < 0 || (depth === 0 && character === ',')) return at;
    if (depth === 0 && (character === '}' || character === ']' || character === '"')) return at + 1;
  }
  return text.length;
}

function endOfString(text: string, at: number): number {
  const lexed = lexString(text, at);
  return lexed.ok ? lexed.end : text.length;
}
