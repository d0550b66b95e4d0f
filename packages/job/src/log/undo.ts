/**
 * Undo: a new group that takes one's own group back. It is refused as soon as anything the group wrote has been
 * changed since, by anybody. Redo is the undo of the undo.
 *
 * What to go back to is found by folding the touched elements without the group, so it cannot differ from what the
 * document was. One thing is not brought back: where the group had settled several concurrent values, the winner of
 * them returns, the others stay in the log only.
 */
import { inspectOperation } from './check-operation.ts';
import { type Element, elementOf } from './document.ts';
import type { Entry } from './element-operations.ts';
import type { Folding } from './fold.ts';
import { sameJson } from './json.ts';
import { operationId, parseGroup, SINGLETON } from './names.ts';
import { type Draft, inkGroup, nextId, penOf, type Writer } from './pen.ts';
import { Sight } from './sight.ts';
import {
  draftRemove,
  draftRevival,
  refuse,
  type WriteIssue,
  type WriteResult,
  writerIssue,
} from './writer.ts';

export interface Undoing {
  readonly group: string;
  /** Own groups written since that take each other back, such as a later edit and its undo. */
  readonly cancelled?: readonly string[];
}

export function undoGroup(folding: Folding, { group, cancelled = [] }: Undoing, writer: Writer): WriteResult {
  const document = folding.document();
  const issue = writerIssue(document, writer);
  if (issue) return refuse(issue);
  const members = membersOf(folding, group, writer.author);
  if ('code' in members) return refuse(members);
  const ids = new Set(members.map((entry) => entry.operation.id));
  for (const later of cancelled) for (const id of idsOf(later)) ids.add(id);
  const pen = penOf(document, writer);
  const sight = new Sight(document);
  const drafts: Draft[] = [];
  const put = (draft: Draft) => {
    sight.note(draft, nextId(pen, writer, drafts.length));
    drafts.push(draft);
  };
  for (const entries of byElement(members)) {
    const { collection, element: id } = entries[0]!.target;
    const now = elementOf(document, collection, id);
    const change = now && { entries, ids, now, before: folding.elementWithout(collection, id, ids) };
    const taken = change && takeBack(change);
    if (!taken) return refuse({ code: 'moved-on', where: `${collection}/${id}` });
    for (const draft of taken) put(draft);
    if (isToGo(change)) put(draftRemove(sight.element(collection, id)!));
  }
  if (drafts.length === 0) return { ok: true, operations: [] };
  return { ok: true, operations: inkGroup(drafts, pen, writer).operations };
}

function idsOf(name: string): string[] {
  const group = parseGroup(name);
  if (!group) return [];
  return Array.from({ length: group.count }, (_, i) => operationId(group.replica, group.first + i));
}

/** The operations of a group that is whole, undoable and the author's own. */
function membersOf(folding: Folding, name: string, author: string): Entry[] | WriteIssue {
  const group = parseGroup(name);
  const members: Entry[] = [];
  for (let i = 0; group && i < group.count; i++) {
    const found = folding
      .stored(operationId(group.replica, group.first + i))
      .map(inspectOperation)
      .find((one) => one.state !== 'bad' && one.state !== 'newer' && one.operation.group === name);
    if (!found) return { code: 'group-missing', where: name };
    if (found.state !== 'known' || !isUndoable(found)) return { code: 'not-undoable', where: name };
    if (found.operation.author !== author) return { code: 'not-own-group', where: name };
    members.push(found);
  }
  return members.length > 0 ? members : { code: 'group-missing', where: name };
}

function isUndoable({ operation }: Entry): boolean {
  return operation.kind !== 'job.create' && operation.kind !== 'record.append';
}

/** The group's operations by element, in the order the elements were first touched. */
function byElement(members: readonly Entry[]): Entry[][] {
  const elements = new Map<string, Entry[]>();
  for (const entry of members) {
    const key = `${entry.target.collection}/${entry.target.element}`;
    const same = elements.get(key);
    if (same) same.push(entry);
    else elements.set(key, [entry]);
  }
  return [...elements.values()];
}

interface Change {
  /** The group's operations on the element. */
  readonly entries: readonly Entry[];
  /** What counts as own: the group, and what has been cancelled since. */
  readonly ids: ReadonlySet<string>;
  readonly now: Element;
  readonly before: Element | undefined;
}

/**
 * The drafts that bring the element back, the removal of one that was not there left to the caller; undefined where it
 * has moved on. A tombstone gets its fields back as well: a later restoration must not bring up what was undone.
 */
function takeBack(change: Change): Draft[] | undefined {
  const { now, before, ids } = change;
  const isOwn = (heads: readonly string[]) => heads.every((head) => ids.has(head));
  const cameOrWent = change.entries.some(({ operation: { kind } }) => isExistence(kind));
  if ((cameOrWent || !now.alive) && !isOwn(now.heads)) return undefined;
  if (!before) return now.id === SINGLETON ? fieldsBack(change, isOwn) : [];
  const fields = fieldsBack(change, isOwn);
  if (!before.alive) return fields;
  const revival = now.alive ? [] : [draftRevival(now, before.order || now.order)];
  const place = now.alive ? placeBack(change, isOwn) : [];
  return place && fields ? [...revival, ...place, ...fields] : undefined;
}

/** Whether the element has to go: it lives and did not before. */
function isToGo({ now, before }: Change): boolean {
  return now.alive && now.id !== SINGLETON && !before?.alive;
}

function isExistence(kind: string): boolean {
  return kind === 'element.add' || kind === 'element.remove';
}

type IsOwn = (heads: readonly string[]) => boolean;

function placeBack({ entries, now, before }: Change, isOwn: IsOwn): Draft[] | undefined {
  if (!entries.some((entry) => entry.target.field === undefined)) return [];
  if (!isOwn(now.orderHeads) || (before && before.removals.length > 0)) return undefined;
  const order = before?.order ?? '';
  if (order === '' || order === now.order) return [];
  const target = `${now.collection}/${now.id}`;
  return [{ kind: 'element.move', target, value: { order }, replaces: now.orderHeads }];
}

function fieldsBack({ entries, now, before }: Change, isOwn: IsOwn): Draft[] | undefined {
  const names = new Set(entries.flatMap(({ target }) => (target.field === undefined ? [] : [target.field])));
  const drafts: Draft[] = [];
  for (const name of names) {
    const field = now.fields.get(name)!;
    if (!isOwn(field.heads)) return undefined;
    const value = before?.fields.get(name)?.value ?? null;
    if (sameJson(value, field.value)) continue;
    const target = `${now.collection}/${now.id}/${name}`;
    drafts.push({ kind: 'field.set', target, value, replaces: field.heads });
  }
  return drafts;
}
