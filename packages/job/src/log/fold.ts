/**
 * The fold: a set of operations → the document. Total, commutative, associative and idempotent: any order, any
 * repetition and any way of splitting and joining the set give the same document (SPEC.md, L20 to L23).
 *
 * It works element by element: what arrives marks its element, and only marked elements are folded again, so a
 * `Folding` follows edits as they come at the cost of the elements they touch.
 */

import { type Inspected, inspectOperation } from './check-operation.ts';
import { compareOperations } from './compare.ts';
import type { Created, Element, FoldedDocument, ReplicaProgress } from './document.ts';
import type { Entry } from './element-operations.ts';
import type { Operation, StoredOperation } from './envelope.ts';
import { type LogFinding, sortFindings } from './findings.ts';
import { foldElement } from './fold-element.ts';
import { foldRecords } from './fold-records.ts';
import { GroupWatch } from './group-watch.ts';
import { HLC_ZERO, isHlc } from './hlc.ts';
import { groupHolds, type OperationId, parseGroup } from './names.ts';
import { OperationSet } from './operation-set.ts';

/** Folds a whole log. Without `doc`, the document is the one its earliest creation, else its earliest operation names. */
export function fold(operations: Iterable<StoredOperation>, doc?: string): FoldedDocument {
  const list = [...operations];
  const folding = new Folding(doc ?? documentOf(list));
  folding.take(list);
  return folding.document();
}

/** The document most likely meant by a log that does not say; empty for an empty log. */
export function documentOf(operations: Iterable<StoredOperation>): string {
  let first: Operation | undefined;
  for (const stored of operations) {
    const found = inspectOperation(stored);
    if (found.state !== 'known' && found.state !== 'unknown') continue;
    if (!first || comesFirst(found.operation, first)) first = found.operation;
  }
  return first?.doc ?? '';
}

function comesFirst(a: Operation, b: Operation): boolean {
  const creates = (operation: Operation) => operation.kind === 'job.create';
  return creates(a) === creates(b) ? compareOperations(a, b) < 0 : creates(a);
}

interface ElementLog {
  readonly collection: string;
  readonly id: string;
  readonly entries: Entry[];
}

type Sound = Exclude<Inspected, { state: 'bad' }>;

export class Folding {
  readonly doc: string;
  readonly #stored = new OperationSet();
  readonly #groups = new GroupWatch();
  readonly #elements = new Map<string, ElementLog>();
  readonly #marked = new Set<ElementLog>();
  readonly #elementFindings = new Map<ElementLog, readonly LogFinding[]>();
  /** Missing id → the elements on which an operation names it. */
  readonly #missed = new Map<string, Set<ElementLog>>();
  readonly #creates: Entry[] = [];
  readonly #records: Entry[] = [];
  readonly #replicas = new Map<string, ReplicaProgress>();
  readonly #findings: LogFinding[] = [];
  readonly #conflicting = new Map<string, LogFinding>();
  #collections = new Map<string, Map<string, Element>>();

  constructor(doc: string) {
    this.doc = doc;
  }

  /** Takes operations in; those it already has change nothing. */
  take(operations: Iterable<StoredOperation>): void {
    for (const stored of operations) this.#takeOne(stored);
  }

  /** The stored operations under an id: none, one, or two contents of one id. */
  stored(id: string): readonly StoredOperation[] {
    return this.#stored.get(id);
  }

  /** The document as of now; later operations do not change it. */
  document(): FoldedDocument {
    this.#foldMarked();
    const { records, findings } = foldRecords(this.#records);
    const created = this.#created();
    return {
      doc: this.doc,
      ...(created ? { created } : {}),
      collections: new Map(this.#collections),
      records,
      replicas: new Map([...this.#replicas].sort(([a], [b]) => (a < b ? -1 : 1))),
      findings: sortFindings([...this.#allFindings(), ...findings]),
    };
  }

  #takeOne(stored: StoredOperation): void {
    const found = inspectOperation(stored);
    if (found.state === 'bad') this.#refuse(stored, found.problem);
    else if (this.#isOurs(found) && this.#isNew(found.stored)) this.#enter(found);
  }

  #refuse(stored: StoredOperation, problem: { readonly code: string; readonly path: string }): void {
    const id: unknown = (stored as { readonly id?: unknown } | null)?.id;
    const ids = typeof id === 'string' ? [id] : [];
    this.#findings.push({ code: 'bad-operation', where: problem.path, ids, reason: problem.code });
  }

  #isOurs(found: Sound): boolean {
    const doc: unknown = found.state === 'newer' ? found.stored['doc'] : found.operation.doc;
    if (doc === this.doc || typeof doc !== 'string') return true;
    this.#findings.push({ code: 'other-document', where: doc, ids: [found.stored.id] });
    return false;
  }

  /** Files it under its id; false when the very same operation is there already. */
  #isNew(stored: StoredOperation): boolean {
    const { id } = stored;
    const arrival = this.#stored.add(stored);
    if (arrival === 'conflicting') {
      this.#conflicting.set(id, { code: 'conflicting-duplicate', where: '', ids: [id] });
    }
    for (const element of this.#missed.get(id) ?? []) this.#marked.add(element);
    this.#missed.delete(id);
    return arrival !== 'repeated';
  }

  #enter(found: Sound): void {
    this.#noteProgress(found.id, found.stored);
    if (found.state === 'known') this.#apply(found);
    else this.#setAside(found);
  }

  #noteProgress(id: OperationId, { id: text, hlc }: StoredOperation): void {
    const known = this.#replicas.get(id.replica) ?? { last: 0, count: 0, hlc: HLC_ZERO };
    const isFirst = !this.#conflicting.has(text);
    const clock = typeof hlc === 'string' && isHlc(hlc) && hlc > known.hlc ? hlc : known.hlc;
    this.#replicas.set(id.replica, {
      last: Math.max(known.last, id.seq),
      count: known.count + (isFirst ? 1 : 0),
      hlc: clock,
    });
  }

  #setAside(found: Exclude<Sound, { state: 'known' }>): void {
    const { id } = found.stored;
    const newer = found.state === 'newer';
    const where = newer ? '' : found.operation.kind;
    this.#findings.push({ code: newer ? 'newer-operation' : 'unknown-kind', where, ids: [id] });
    const name: unknown = found.stored['group'];
    const group = typeof name === 'string' ? parseGroup(name) : undefined;
    if (group && groupHolds(group, found.id)) this.#groups.arriveUnknown(name as string, group, id);
  }

  #apply({ operation, target, group }: Extract<Inspected, { state: 'known' }>): void {
    const entry: Entry = { operation, target, held: false };
    const freed = this.#groups.arrive(group, entry);
    if (operation.kind === 'job.create') this.#creates.push(entry);
    else if (operation.kind === 'record.append') this.#records.push(entry);
    else this.#elementLog(entry).entries.push(entry);
    for (const member of [entry, ...freed]) this.#mark(member);
  }

  #mark(entry: Entry): void {
    const { kind } = entry.operation;
    if (kind !== 'job.create' && kind !== 'record.append') this.#marked.add(this.#elementLog(entry));
  }

  #elementLog({ target }: Entry): ElementLog {
    const key = `${target.collection}/${target.element}`;
    let log = this.#elements.get(key);
    if (!log) {
      log = { collection: target.collection, id: target.element, entries: [] };
      this.#elements.set(key, log);
    }
    return log;
  }

  #foldMarked(): void {
    const fresh = new Map<string, Map<string, Element>>();
    for (const log of this.#marked) {
      const folded = foldElement(log.entries, (id) => this.#stored.has(id));
      this.#elementFindings.set(log, folded?.findings ?? []);
      this.#noteMissed(log, folded?.findings ?? []);
      if (!folded) continue;
      const { collection } = log;
      if (!fresh.has(collection)) fresh.set(collection, new Map(this.#collections.get(collection)));
      fresh.get(collection)!.set(log.id, folded.element);
    }
    this.#marked.clear();
    for (const [name, elements] of fresh) this.#replaceCollection(name, elements);
  }

  #noteMissed(log: ElementLog, findings: readonly LogFinding[]): void {
    for (const { code, ids } of findings) {
      if (code !== 'dangling-replaces') continue;
      const missing = ids[1]!;
      if (!this.#missed.has(missing)) this.#missed.set(missing, new Set());
      this.#missed.get(missing)!.add(log);
    }
  }

  /** Keeps collections and elements sorted by name, so that no order of arrival shows anywhere. */
  #replaceCollection(name: string, elements: Map<string, Element>): void {
    const known = this.#collections.get(name);
    const grown = elements.size !== known?.size;
    this.#collections.set(name, grown ? sortedByKey(elements) : elements);
    if (!known) this.#collections = sortedByKey(this.#collections);
  }

  #created(): Created | undefined {
    const creates = this.#creates.filter((entry) => !entry.held).map((entry) => entry.operation);
    const first = creates.sort(compareOperations)[0];
    return first && { id: first.id, hlc: first.hlc, author: first.author, value: first.value };
  }

  #allFindings(): LogFinding[] {
    const findings = [...this.#findings, ...this.#conflicting.values(), ...this.#groups.findings()];
    for (const list of this.#elementFindings.values()) findings.push(...list);
    const creates = this.#creates.filter((entry) => !entry.held).map((entry) => entry.operation);
    if (creates.length > 1) {
      const ids = creates.sort(compareOperations).map((operation) => operation.id);
      findings.push({ code: 'created-twice', where: 'job/-', ids });
    }
    return findings;
  }
}

function sortedByKey<T>(map: ReadonlyMap<string, T>): Map<string, T> {
  return new Map([...map].sort(([a], [b]) => (a < b ? -1 : 1)));
}
