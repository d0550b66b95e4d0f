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
import { type Draft, inkGroup, penOf, type Writer } from './pen.ts';
import {
  draftRemove,
  draftRevival,
  refuse,
  type WriteIssue,
  type WriteResult,
  writerIssue,
} from './writer.ts';

export function undoGroup(folding: Folding, group: string, writer: Writer): WriteResult {
  const document = folding.document();
  const issue = writerIssue(document, writer);
  if (issue) return refuse(issue);
  const members = membersOf(folding, group, writer.author);
  if ('code' in members) return refuse(members);
  const drafts: Draft[] = [];
  for (const touched of touchedElements(members)) {
    const { collection, element: id } = touched.entries[0]!.target;
    const now = elementOf(document, collection, id);
    const before = folding.elementWithout(collection, id, touched.ids);
    const taken = now ? takeBack({ ...touched, now, before }) : undefined;
    if (taken === undefined) return refuse({ code: 'moved-on', where: `${collection}/${id}` });
    drafts.push(...taken);
  }
  if (drafts.length === 0) return { ok: true, operations: [] };
  return { ok: true, operations: inkGroup(drafts, penOf(document, writer), writer).operations };
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

interface Touched {
  readonly entries: readonly Entry[];
  readonly ids: ReadonlySet<string>;
}

/** The group's operations by element, in the order the elements were first touched. */
function touchedElements(members: readonly Entry[]): Touched[] {
  const ids = new Set(members.map((entry) => entry.operation.id));
  const byElement = new Map<string, Entry[]>();
  for (const entry of members) {
    const key = `${entry.target.collection}/${entry.target.element}`;
    byElement.set(key, [...(byElement.get(key) ?? []), entry]);
  }
  return [...byElement.values()].map((entries) => ({ entries, ids }));
}

interface Change extends Touched {
  readonly now: Element;
  readonly before: Element | undefined;
}

/** The drafts that bring the element back; undefined where it has moved on. */
function takeBack(change: Change): Draft[] | undefined {
  const { now, before, ids } = change;
  const isOwn = (heads: readonly string[]) => heads.every((head) => ids.has(head));
  const wasAlive = before?.alive ?? now.id === SINGLETON;
  if (!wasAlive && !now.alive) return isOwn(now.removals) ? [] : undefined;
  if (!wasAlive) return isOwn(now.heads) ? [draftRemove(now)] : undefined;
  if (!now.alive && !isOwn(now.heads)) return undefined;
  const revival = now.alive ? [] : [draftRevival(now, before?.order || now.order)];
  const place = now.alive ? placeBack(change, isOwn) : [];
  const fields = fieldsBack(change, isOwn);
  return place && fields ? [...revival, ...place, ...fields] : undefined;
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
