/** The fold of one element: alive or not, its place, its fields. A function of the set of its operations alone. */
import { compareOperations } from './compare.ts';
import type { Element, Field } from './document.ts';
import { type Entry, readSeen, type Seen } from './element-operations.ts';
import type { ElementValue, Operation } from './envelope.ts';
import type { LogFinding } from './findings.ts';
import { sameJson } from './json.ts';
import { SINGLETON } from './names.ts';

export interface ElementFold {
  readonly element: Element;
  readonly findings: readonly LogFinding[];
}

/** Undefined when no operation on the element is applied. */
export function foldElement(
  entries: readonly Entry[],
  isKnown: (id: string) => boolean,
): ElementFold | undefined {
  const taken = entries.filter((entry) => !entry.held);
  const [first] = taken;
  if (!first) return undefined;
  const seen = readSeen(entries, isKnown);
  const { collection, element: id } = first.target;
  const orders = latestLast(headsAmong(taken.filter(givesOrder), seen));
  const heads = latestLast(headsAmong(taken, seen));
  const element: Element = {
    collection,
    id,
    alive: id === SINGLETON || isAlive(taken, seen),
    order: orders.length > 0 ? (orders.at(-1)!.value as unknown as ElementValue).order : '',
    orderHeads: ids(orders),
    fields: foldFields(taken, seen),
    heads: ids(heads),
    removals: ids(heads.filter((operation) => operation.kind === 'element.remove')),
  };
  return { element, findings: [...seen.findings, ...elementFindings(element, taken)] };
}

function givesOrder(entry: Entry): boolean {
  return entry.operation.kind === 'element.add' || entry.operation.kind === 'element.move';
}

function latestLast(entries: readonly Entry[]): Operation[] {
  return entries.map((entry) => entry.operation).sort(compareOperations);
}

function ids(operations: readonly Operation[]): string[] {
  return [...new Set(operations.map((operation) => operation.id))];
}

/** The operations among `candidates` that none of them replaces. */
function headsAmong(candidates: readonly Entry[], seen: Seen): Entry[] {
  if (candidates.length < 2) return [...candidates];
  const replaced = new Set<string>();
  // What waits for its group replaces nothing itself, but one that replaces it has seen what it saw.
  const passes = (entry: Entry) => entry.held;
  for (const candidate of candidates) markSeen(candidate, { seen, marked: replaced, passes });
  return candidates.filter((candidate) => !replaced.has(candidate.operation.id));
}

/**
 * Alive while anything said of the element, other than its removal, was not seen by a removal. What a removal saw
 * is what it names, and what that names in turn.
 */
function isAlive(taken: readonly Entry[], seen: Seen): boolean {
  const covered = new Set<string>();
  for (const entry of taken) {
    if (entry.operation.kind === 'element.remove')
      markSeen(entry, { seen, marked: covered, passes: () => true });
  }
  return taken.some((entry) => entry.operation.kind !== 'element.remove' && !covered.has(entry.operation.id));
}

interface Marking {
  readonly seen: Seen;
  readonly marked: Set<string>;
  /** Whether what this operation saw counts as seen too. */
  readonly passes: (entry: Entry) => boolean;
}

function markSeen(start: Entry, { seen, marked, passes }: Marking): void {
  const open = [start];
  for (let entry = open.pop(); entry; entry = open.pop()) {
    for (const id of seen.edges.get(entry) ?? []) {
      if (marked.has(id)) continue;
      marked.add(id);
      for (const other of seen.byId.get(id)!.entries) if (passes(other)) open.push(other);
    }
  }
}

function foldFields(taken: readonly Entry[], seen: Seen): Map<string, Field> {
  const byField = new Map<string, Entry[]>();
  for (const entry of taken) {
    const { field } = entry.target;
    if (field === undefined) continue;
    const same = byField.get(field);
    if (same) same.push(entry);
    else byField.set(field, [entry]);
  }
  const fields = new Map<string, Field>();
  for (const name of [...byField.keys()].sort()) fields.set(name, foldField(byField.get(name)!, seen));
  return fields;
}

function foldField(entries: readonly Entry[], seen: Seen): Field {
  const heads = latestLast(headsAmong(entries, seen)).reverse();
  const winner = heads[0]!;
  const { value, id, hlc, author } = winner;
  const others = heads
    .filter((head) => head !== winner && !sameJson(head.value, value))
    .map((head) => ({ value: head.value, id: head.id, hlc: head.hlc, author: head.author }));
  return { value, id, hlc, author, heads: ids(heads), others };
}

function elementFindings(element: Element, taken: readonly Entry[]): LogFinding[] {
  const where = `${element.collection}/${element.id}`;
  const findings: LogFinding[] = [];
  for (const [name, field] of element.fields) {
    if (field.others.length === 0) continue;
    findings.push({ code: 'concurrent-values', where: `${where}/${name}`, ids: field.heads });
  }
  if (element.id === SINGLETON) return findings;
  if (element.alive && element.removals.length > 0) {
    findings.push({ code: 'edit-against-delete', where, ids: element.removals });
  }
  if (!taken.some((entry) => entry.operation.kind === 'element.add')) {
    findings.push({ code: 'never-added', where, ids: element.heads });
  }
  return findings;
}
