/** A document as a writer sees it while writing a group: with the drafts so far already in it. */
import {
  compareElements,
  type Element,
  elementOf,
  elementsOf,
  type Field,
  type FoldedDocument,
} from './document.ts';
import type { ElementValue } from './envelope.ts';
import { parseTarget } from './names.ts';
import type { Draft } from './pen.ts';

export class Sight {
  readonly document: FoldedDocument;
  /** Whether the document has its creation. */
  created: boolean;
  /** Elements the drafts changed, by `collection/id`. */
  readonly #changed = new Map<string, Element>();

  constructor(document: FoldedDocument) {
    this.document = document;
    this.created = document.created !== undefined;
  }

  element(collection: string, id: string): Element | undefined {
    return this.#changed.get(`${collection}/${id}`) ?? elementOf(this.document, collection, id);
  }

  /** The living elements of a collection in their order. */
  siblings(collection: string): Element[] {
    const kept = elementsOf(this.document, collection).filter(
      (e) => !this.#changed.has(`${collection}/${e.id}`),
    );
    const changed = [...this.#changed.values()].filter((e) => e.collection === collection && e.alive);
    return [...kept, ...changed].sort(compareElements);
  }

  /** Takes a draft in, under the id it will bear. */
  note(draft: Draft, id: string): void {
    const target = parseTarget(draft.target);
    if (draft.kind === 'job.create') this.created = true;
    if (!target || draft.kind === 'job.create' || draft.kind === 'record.append') return;
    const before =
      this.element(target.collection, target.element) ?? blank(target.collection, target.element);
    const heads = [...before.heads.filter((head) => !draft.replaces.includes(head)), id];
    const after = { ...before, heads, ...change(draft, id, before) };
    this.#changed.set(`${target.collection}/${target.element}`, after);
  }
}

function blank(collection: string, id: string): Element {
  const none = { order: '', orderHeads: [], fields: new Map(), heads: [], removals: [] };
  return { collection, id, alive: true, ...none };
}

function change(draft: Draft, id: string, before: Element): Partial<Element> {
  const removals = before.removals.filter((removal) => !draft.replaces.includes(removal));
  switch (draft.kind) {
    case 'field.set':
      return { fields: withField(before, draft, id) };
    case 'element.add':
      return { alive: true, removals, ...placeOf(draft, id) };
    case 'element.move':
      return placeOf(draft, id);
    default:
      return { alive: false, removals: [id] };
  }
}

function placeOf(draft: Draft, id: string): Pick<Element, 'order' | 'orderHeads'> {
  return { order: (draft.value as unknown as ElementValue).order, orderHeads: [id] };
}

function withField(before: Element, draft: Draft, id: string): Map<string, Field> {
  const name = draft.target.split('/')[2]!;
  const field: Field = { value: draft.value, id, hlc: '', author: '', heads: [id], others: [] };
  return new Map(before.fields).set(name, field);
}
