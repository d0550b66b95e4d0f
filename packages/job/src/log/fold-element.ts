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

/** What a fold knows beyond the element: which operations wait for their group, which ids stand anywhere in the log. */
export interface Surroundings {
  readonly held: ReadonlySet<Entry>;
  readonly isKnown: (id: string) => boolean;
}

interface Work {
  /** The operations that are applied. */
  readonly taken: readonly Entry[];
  readonly held: ReadonlySet<Entry>;
  readonly seen: Seen;
}

/** Undefined when no operation on the element is applied. */
export function foldElement(entries: readonly Entry[], around: Surroundings): ElementFold | undefined {
  const { held } = around;
  const taken = held.size === 0 ? entries : entries.filter((entry) => !held.has(entry));
  const [first] = taken;
  if (!first) return undefined;
  const work: Work = { taken, held, seen: readSeen(entries, around.isKnown) };
  const { collection, element: id } = first.target;
  const orders = latestLast(headsAmong(taken.filter(givesOrder), work));
  const heads = latestLast(headsAmong(taken, work));
  const element: Element = {
    collection,
    id,
    alive: id === SINGLETON || isAlive(work),
    order: orders.length > 0 ? (orders.at(-1)!.value as unknown as ElementValue).order : '',
    orderHeads: ids(orders),
    fields: foldFields(work),
    heads: ids(heads),
    removals: ids(heads.filter(removes)),
  };
  return { element, findings: [...work.seen.findings, ...elementFindings(element, taken)] };
}

function givesOrder(entry: Entry): boolean {
  return entry.operation.kind === 'element.add' || entry.operation.kind === 'element.move';
}

function removes(operation: Operation): boolean {
  return operation.kind === 'element.remove';
}

function latestLast(entries: readonly Entry[]): Operation[] {
  return entries.map((entry) => entry.operation).sort(compareOperations);
}

function ids(operations: readonly Operation[]): readonly string[] {
  return [...new Set(operations.map((operation) => operation.id))];
}

/** The operations among `candidates` that none of them replaces. */
function headsAmong(candidates: readonly Entry[], { held, seen }: Work): readonly Entry[] {
  if (candidates.length < 2 || seen.edges.size === 0) return candidates;
  const replaced = new Set<string>();
  // What waits for its group replaces nothing itself, but one that replaces it has seen what it saw.
  const passes = (entry: Entry) => held.has(entry);
  for (const candidate of candidates) markSeen(candidate, { seen, marked: replaced, passes });
  return candidates.filter((candidate) => !replaced.has(candidate.operation.id));
}

/**
 * Alive while anything said of the element, other than its removal, was not seen by a removal. What a removal saw
 * is what it names, and what that names in turn.
 */
function isAlive({ taken, seen }: Work): boolean {
  const covered = new Set<string>();
  const marking: Marking = { seen, marked: covered, passes: () => true };
  for (const entry of taken) if (removes(entry.operation)) markSeen(entry, marking);
  return taken.some(({ operation }) => !removes(operation) && !covered.has(operation.id));
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

function foldFields(work: Work): Map<string, Field> {
  const byField = new Map<string, Entry | Entry[]>();
  for (const entry of work.taken) {
    const { field } = entry.target;
    if (field === undefined) continue;
    const same = byField.get(field);
    if (same === undefined) byField.set(field, entry);
    else if (Array.isArray(same)) same.push(entry);
    else byField.set(field, [same, entry]);
  }
  const fields = new Map<string, Field>();
  for (const name of [...byField.keys()].sort()) {
    const same = byField.get(name)!;
    fields.set(name, Array.isArray(same) ? foldField(same, work) : fieldOf(same.operation));
  }
  return fields;
}

function fieldOf({ value, id, hlc, author }: Operation): Field {
  return { value, id, hlc, author, heads: [id], others: [] };
}

function foldField(entries: readonly Entry[], work: Work): Field {
  const heads = latestLast(headsAmong(entries, work)).reverse();
  const winner = heads[0]!;
  const others = heads
    .filter((head) => !sameJson(head.value, winner.value))
    .map(({ value, id, hlc, author }) => ({ value, id, hlc, author }));
  return { ...fieldOf(winner), heads: ids(heads), others };
}

/** What to tell of a living element; what a tombstone holds concerns nobody until it is restored. */
function elementFindings(element: Element, taken: readonly Entry[]): LogFinding[] {
  if (!element.alive) return [];
  const where = `${element.collection}/${element.id}`;
  const findings: LogFinding[] = [];
  for (const [name, field] of element.fields) {
    if (field.others.length === 0) continue;
    findings.push({ code: 'concurrent-values', where: `${where}/${name}`, ids: field.heads });
  }
  if (element.id === SINGLETON) return findings;
  if (element.removals.length > 0) {
    findings.push({ code: 'edit-against-delete', where, ids: element.removals });
  }
  if (!taken.some((entry) => entry.operation.kind === 'element.add')) {
    findings.push({ code: 'never-added', where, ids: element.heads });
  }
  return findings;
}
