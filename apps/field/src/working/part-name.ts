/** Parts that a working speaks of by the name the study gave them, as people call them. */
import type { JobView } from '@firstfire/job';
import type { Slots } from '@firstfire/words';
import type { AppText } from '../text/app-text.ts';

const NAMED = /^(segment|regulator) (.+)$/;
const COLLECTIONS: Readonly<Record<string, string>> = { segment: 'gasSegments', regulator: 'gasRegulators' };
/** Parts of every gas system, by phrases of their own. */
const FIXED = ['regulator service', 'meter', 'existing load', 'supply', 'street'];
/** A junction that nobody named. */
const MADE = /^g[0-9a-f]{12}$/;

export function partNames(about: Slots, view: JobView, text: AppText): Slots {
  return Object.fromEntries(
    Object.entries(about).map(([slot, name]) => [
      slot,
      typeof name === 'string' ? partName(slot, name, { view, text }) : name,
    ]),
  );
}

interface Told {
  readonly view: JobView;
  readonly text: AppText;
}

function partName(slot: string, name: string, { view, text }: Told): string {
  if (FIXED.includes(name)) return text.phrase(`working-part.${name.replace(' ', '-')}`);
  const [, kind = '', id = ''] = NAMED.exec(name) ?? [];
  if (kind !== '') return nameOf(view, COLLECTIONS[kind] ?? '', id);
  if (slot === 'section') return nameOf(view, 'gasSegments', name);
  return slot === 'node' ? nodeName(name, { view, text }) : name;
}

/** A junction goes by what hangs on it. */
function nodeName(node: string, { view, text }: Told): string {
  for (const collection of ['heaters', 'gasAppliances']) {
    const hung = view.all(collection).find((one) => one.reading('node')?.value === node);
    if (hung !== undefined) return nameOf(view, collection, hung.id);
  }
  return MADE.test(node) ? text.phrase('working-part.tee') : node;
}

function nameOf(view: JobView, collection: string, id: string): string {
  const name = view.record(collection, id).reading('name')?.value;
  return typeof name === 'string' && name !== '' ? name : id;
}
