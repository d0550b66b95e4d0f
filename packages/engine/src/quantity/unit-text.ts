/**
 * One spelling for a unit text: the key under which the table is searched.
 *
 * Signs that mean the same become plain ASCII (`²` → `2`, `°` → `deg`, `″` → `"`), spaces and full stops between
 * letters go, `per` becomes a slash, and the words for hour, minute, second and day after a slash are shortened.
 */
const SIGNS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    '·': '*',
    '⋅': '*',
    '•': '*',
    '×': '*',
    '−': '-',
    '–': '-',
    '‐': '-',
    '‑': '-',
    '′': "'",
    '’': "'",
    '‘': "'",
    '″': '"',
    '”': '"',
    '“': '"',
    '°': 'deg',
    º: 'deg',
    '℃': 'degC',
    '℉': 'degF',
    '\u00b5': 'u',
    '\u03bc': 'u',
    '\u03a9': 'ohm',
    '\u2126': 'ohm',
    Δ: 'delta',
    '∆': 'delta',
    '⁄': '/',
    '∕': '/',
    '⁻': '-',
    '⁰': '0',
    '¹': '1',
    '²': '2',
    '³': '3',
    '⁴': '4',
    '₂': '2',
    '^': '',
    '\u200b': '',
  }),
);

const LONG_TIMES: readonly (readonly [RegExp, string])[] = [
  [/\/(hours?|hrs?)(?![a-z])/gi, '/h'],
  [/\/(minutes?|mins?)(?![a-z])/gi, '/min'],
  [/\/(seconds?|secs?)(?![a-z])/gi, '/s'],
  [/\/days?(?![a-z])/gi, '/d'],
];

/** The key of a unit text. */
export function unitKey(text: string): string {
  const plain = asciiUnit(text).replace(/(^|\s)per\s+/gi, '/');
  let key = plain.replace(/[\s*]/g, '').replace(/\.(?!\d)/g, '');
  if (key.includes('/')) for (const [long, short] of LONG_TIMES) key = key.replace(long, short);
  return key;
}

/** A unit text in plain ASCII, its spaces kept. */
export function asciiUnit(text: string): string {
  let plain = '';
  for (const sign of text) plain += SIGNS.get(sign) ?? sign;
  return plain.trim();
}
