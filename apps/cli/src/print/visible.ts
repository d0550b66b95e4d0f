/**
 * Text from a file, made safe for a terminal: control characters could move the cursor, and marks of direction could
 * turn a line about, so that a name would write over a verdict. Each stands as U+FFFD; line ends stay.
 */
const HIDDEN = /[\p{Cc}\p{Bidi_Control}\u2028\u2029]/gu;
/** What the painter writes. */
const ESCAPE = '\u001b';
const COLOURED = new RegExp(`(${ESCAPE}\\[[0-9;]{1,4}m)`);

export function visible(text: string, colour: boolean): string {
  if (!colour) return shown(text);
  return text
    .split(COLOURED)
    .map((part, index) => (index % 2 === 1 ? part : shown(part)))
    .join('');
}

function shown(text: string): string {
  return text.replace(HIDDEN, (hidden) => (hidden === '\n' ? hidden : '\ufffd'));
}

/** A name on one line, whatever breaks stand in it. */
export function oneLine(name: string): string {
  return name.replace(/\s+/g, ' ').trim();
}
