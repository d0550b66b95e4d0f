/** Fills the slots of a sentence: `At least {required}` with `{ required: '4.5 in w.c.' }`. */
export type Slots = Readonly<Record<string, string | number>>;

const SLOT = /\{([a-z-]+)\}/g;

/** A slot without a value stays visible as written, which a test notices and a person can still read. */
export function fill(sentence: string, slots: Slots = {}): string {
  return sentence.replace(SLOT, (whole, name: string) =>
    Object.hasOwn(slots, name) ? String(slots[name]) : whole,
  );
}

/** Names of the slots of a sentence. */
export function slotsOf(sentence: string): readonly string[] {
  return [...sentence.matchAll(SLOT)].map((match) => match[1] ?? '');
}
