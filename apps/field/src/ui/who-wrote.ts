/** Who wrote a value, and when, in the reader's words. */
import type { Reading } from '@firstfire/job';
import { readingText } from '../entry/reading.ts';
import type { Written } from '../session/field-history.ts';
import type { AppText } from '../text/app-text.ts';

/** The author of everything written where nobody has given a name. */
const NAMELESS = 'me';

export function whoWrote({ author, replica, at }: Written, own: string, text: AppText): string {
  const device = text.phrase(`who.${replica === own ? 'here' : 'other'}`);
  const when = new Date(at).toLocaleString(text.reader.speech.locale, {
    dateStyle: 'medium',
    timeStyle: 'short',
  });
  return text.phrase('written-by', { who: author === NAMELESS ? device : author, when });
}

/** A value as the log holds it: a reading, or nothing known. */
export function valueText(value: Written['value'], text: AppText): string {
  return isReading(value) ? readingText(value, text) : text.phrase('taken-back');
}

function isReading(value: unknown): value is Reading {
  return typeof value === 'object' && value !== null && 'value' in value && value.value !== undefined;
}
