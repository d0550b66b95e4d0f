/** A job's readings as edits that make another one like it, under another name. */
import type { Edit, FoldedDocument, Json } from '@firstfire/job';

export function editsOf(document: FoldedDocument, name: string): readonly Edit[] {
  const edits: Edit[] = [];
  for (const [collection, elements] of document.collections) {
    for (const { id, alive, fields } of elements.values()) {
      if (!alive) continue;
      if (id !== '-') edits.push({ type: 'add', collection, element: id });
      for (const [field, { value }] of fields) {
        if (value === null || value === undefined) continue;
        const kept: Json = collection === 'job' && field === 'name' ? { value: name, how: 'told' } : value;
        edits.push({ type: 'set', collection, ...(id === '-' ? {} : { element: id }), field, value: kept });
      }
    }
  }
  return edits;
}
