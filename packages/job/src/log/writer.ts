/**
 * Writing: edits to a document as seen → one group of operations. Pure: the caller stores them, all or none, in the
 * transaction in which it read the document, so that no seq is ever used twice.
 */
import type { Element, FoldedDocument } from './document.ts';
import type { Operation } from './envelope.ts';
import { type Json, jsonProblem, sameJson } from './json.ts';
import { formatTarget, isElementId, isFieldOf, isName, RECORDS, SINGLETON } from './names.ts';
import { orderBetween } from './order-key.ts';
import { type Draft, inkGroup, nextId, penOf, type Writer } from './pen.ts';
import { Sight } from './sight.ts';

export type Edit =
  | { readonly type: 'create'; readonly value?: Json }
  /** `element` may be left out for a singleton; null takes the value back to not known. */
  | {
      readonly type: 'set';
      readonly collection: string;
      readonly element?: string;
      readonly field: string;
      readonly value: Json;
    }
  /** After which sibling; null: first; left out: last. */
  | {
      readonly type: 'add';
      readonly collection: string;
      readonly element: string;
      readonly after?: string | null;
    }
  | {
      readonly type: 'move';
      readonly collection: string;
      readonly element: string;
      readonly after: string | null;
    }
  | { readonly type: 'remove'; readonly collection: string; readonly element: string }
  /** Brings a removed element back, or answers a removal that stands against an edit: the element stays. */
  | { readonly type: 'restore'; readonly collection: string; readonly element: string };

export const WRITE_ISSUE_CODES = [
  'bad-name',
  'not-json',
  'element-exists',
  'element-missing',
  /** The element is removed: restore it first. */
  'element-removed',
  /** The document has its creation already. */
  'document-exists',
  /** Written for another document than the one seen. */
  'other-document',
  /** An id of this replica has two contents: it must go on under a new replica id. */
  'replica-cloned',
  /** The group to undo is not in the log, or not whole. */
  'group-missing',
  /** The group was written by somebody else. */
  'not-own-group',
  /** What the group wrote was changed since. */
  'moved-on',
  /** A creation and an entry of a record stand for good. */
  'not-undoable',
] as const;

export interface WriteIssue {
  readonly code: (typeof WRITE_ISSUE_CODES)[number];
  /** The target, group or replica it is about. */
  readonly where: string;
}

export type WriteResult =
  | { readonly ok: true; readonly operations: readonly Operation[] }
  | { readonly ok: false; readonly issues: readonly WriteIssue[] };

/**
 * One group of operations for the edits, each seeing those before it. An edit that changes nothing writes nothing, so
 * the group may be empty. Any issue refuses the whole group.
 */
export function writeGroup(document: FoldedDocument, edits: readonly Edit[], writer: Writer): WriteResult {
  const issue = writerIssue(document, writer);
  if (issue) return refuse(issue);
  const pen = penOf(document, writer);
  const sight = new Sight(document);
  const drafts: Draft[] = [];
  for (const edit of edits) {
    const draft = draftOf(edit, sight);
    if (draft && 'code' in draft) return refuse(draft);
    if (!draft) continue;
    sight.note(draft, nextId(pen, writer, drafts.length));
    drafts.push(draft);
  }
  if (drafts.length === 0) return { ok: true, operations: [] };
  return { ok: true, operations: inkGroup(drafts, pen, writer).operations };
}

export function refuse(...issues: readonly WriteIssue[]): WriteResult {
  return { ok: false, issues };
}

/** Why this writer must not write to this document at all. */
export function writerIssue(document: FoldedDocument, writer: Writer): WriteIssue | undefined {
  if (writer.doc !== document.doc) return { code: 'other-document', where: document.doc };
  const own = `${writer.replica}:`;
  const cloned = document.findings.some(
    (finding) => finding.code === 'conflicting-duplicate' && finding.ids.some((id) => id.startsWith(own)),
  );
  return cloned ? { code: 'replica-cloned', where: writer.replica } : undefined;
}

/** Undefined where the edit changes nothing. */
type Drafted = Draft | WriteIssue | undefined;
type Of<T extends Edit['type']> = Extract<Edit, { type: T }>;

function draftOf(edit: Edit, sight: Sight): Drafted {
  if (edit.type === 'create') return draftCreate(edit.value ?? null, sight);
  const element = edit.element ?? SINGLETON;
  const where = formatTarget({ ...edit, element });
  if (!isWellNamed(edit)) return { code: 'bad-name', where };
  const now = sight.element(edit.collection, element);
  if (edit.type === 'add') return now ? existing(now, where) : draftPlace(edit, where, sight);
  if (edit.type === 'set' && element === SINGLETON) return draftSet(edit, where, now);
  if (!now) return { code: 'element-missing', where };
  if (edit.type === 'restore') return draftRestore(now, sight);
  if (!now.alive) return { code: 'element-removed', where };
  if (edit.type === 'set') return draftSet(edit, where, now);
  return edit.type === 'move' ? draftPlace(edit, where, sight) : draftRemove(now);
}

function isWellNamed(edit: Exclude<Edit, { type: 'create' }>): boolean {
  const element = edit.element ?? SINGLETON;
  if (!isName(edit.collection) || edit.collection === RECORDS || !isElementId(element)) return false;
  return edit.type === 'set' ? isFieldOf(element, edit.field) : element !== SINGLETON;
}

function draftCreate(value: Json, sight: Sight): Drafted {
  const where = `job/${SINGLETON}`;
  if (sight.created) return { code: 'document-exists', where };
  if (jsonProblem(value)) return { code: 'not-json', where };
  return { kind: 'job.create', target: where, value, replaces: [] };
}

function existing(now: Element, where: string): WriteIssue {
  return { code: now.alive ? 'element-exists' : 'element-removed', where };
}

function draftSet({ value, field: name }: Of<'set'>, target: string, now?: Element): Drafted {
  if (jsonProblem(value)) return { code: 'not-json', where: target };
  const field = now?.fields.get(name);
  if (!field && value === null) return undefined;
  if (field && field.heads.length === 1 && sameJson(field.value, value)) return undefined;
  return { kind: 'field.set', target, value, replaces: field?.heads ?? [] };
}

/** A new element, or one that moves, and the order key of its new place. */
function draftPlace(edit: Of<'add'> | Of<'move'>, target: string, sight: Sight): Drafted {
  if (edit.type === 'move' && standsAfter(edit, sight)) return undefined;
  const siblings = sight.siblings(edit.collection).filter((sibling) => sibling.id !== edit.element);
  const { after } = edit;
  const before = after === undefined ? siblings.at(-1) : siblings.find((sibling) => sibling.id === after);
  if (typeof after === 'string' && !before) {
    return { code: 'element-missing', where: `${edit.collection}/${after}` };
  }
  const low = before?.order || undefined;
  const high = siblings.find((sibling) => sibling.order > (low ?? ''))?.order;
  const value = { order: orderBetween(low, high) };
  const replaces = sight.element(edit.collection, edit.element)?.orderHeads ?? [];
  return { kind: edit.type === 'add' ? 'element.add' : 'element.move', target, value, replaces };
}

function standsAfter({ collection, element, after }: Of<'move'>, sight: Sight): boolean {
  const siblings = sight.siblings(collection);
  const at = siblings.findIndex((sibling) => sibling.id === element);
  return (siblings[at - 1]?.id ?? null) === after && siblings[at]?.orderHeads.length === 1;
}

export function draftRemove({ collection, id, heads }: Element): Draft {
  return { kind: 'element.remove', target: `${collection}/${id}`, value: null, replaces: heads };
}

/** Nothing to restore where no removal stands unanswered. */
function draftRestore(now: Element, sight: Sight): Drafted {
  if (now.alive && now.removals.length === 0) return undefined;
  const last = sight.siblings(now.collection).at(-1)?.order;
  return draftRevival(now, now.order || orderBetween(last || undefined));
}

export function draftRevival({ collection, id, removals, orderHeads }: Element, order: string): Draft {
  const replaces = [...removals, ...orderHeads];
  return { kind: 'element.add', target: `${collection}/${id}`, value: { order }, replaces };
}
