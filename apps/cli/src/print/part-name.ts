/** Parts of the gas piping that a working speaks of by the name the study gave them, in the reader's language. */
import { type Dictionary, fill, type Slots } from '@firstfire/words';

const NAMED = /^(segment|regulator) (.+)$/;

const PHRASES: Readonly<Record<string, string>> = {
  segment: 'cli.part.segment',
  regulator: 'cli.part.regulator',
  'regulator service': 'cli.part.service-regulator',
  meter: 'cli.part.meter',
  'existing load': 'cli.part.existing-load',
};

/** `segment s1` → `gas section s1`; any other name is somebody's own and stays. */
function partName(name: string, { phrases }: Dictionary): string {
  if (Object.hasOwn(PHRASES, name)) return phrases[PHRASES[name] ?? ''] ?? name;
  const [, kind = '', id = ''] = NAMED.exec(name) ?? [];
  const phrase = phrases[PHRASES[kind] ?? ''];
  return phrase === undefined ? name : fill(phrase, { id });
}

/** What a step is about, each part by its name. */
export function partNames(about: Slots, words: Dictionary): Slots {
  return Object.fromEntries(
    Object.entries(about).map(([slot, name]) => [
      slot,
      typeof name === 'string' ? partName(name, words) : name,
    ]),
  );
}
