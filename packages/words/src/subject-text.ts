/** What a subject is called: its name, or a phrase around the names where a name alone does not tell it. */
import type { Subject } from '@firstfire/reference';
import type { Dictionary } from './dictionary.ts';
import { fill } from './fill.ts';

export function subjectText({ label, said }: Subject, { phrases }: Dictionary): string {
  const phrase = said === undefined ? undefined : phrases[`subject.${said.phrase}`];
  return phrase === undefined ? label : fill(phrase, said?.slots);
}
