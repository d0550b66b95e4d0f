/**
 * The fold: a set of operations → the document. Total, commutative, associative and idempotent: any order, any
 * repetition and any way of splitting and joining the set give the same document (SPEC.md, L20 to L23).
 *
 * It works element by element: what arrives marks its element, and only marked elements are folded again, so a
 * `Folding` follows edits as they come at the cost of the elements they touch.
 */

import { type Inspected, inspectOperation, type OperationProblem } from './check-operation.ts';
import { compareOperations } from './compare.ts';
import type { Created, Element, FoldedDocument, ReplicaProgress } from './document.ts';
import type { Entry } from './element-operations.ts';
import type { Operation, StoredOperation } from './envelope.ts';
import { type LogFinding, sortFindings } from './findings.ts';
import { foldElement, type Surroundings } from './fold-element.ts';
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
  /** Collection → element id → its operations. */
  readonly #logs = new Map<string, Map<string, ElementLog>>();
  readonly #marked = new Set<ElementLog>();
  readonly #elementFindings = new Map<ElementLog, readonly LogFinding[]>();
  /** Missing id → the elements on which an operation names it. */
  readonly #missed = new Map<string, Set<ElementLog>>();
  readonly #creates: Entry[] = [];
  readonly #records: Entry[] = [];
  readonly #replicas = new Map<string, Progress>();
  readonly #findings: LogFinding[] = [];
  readonly #conflicting = new Set<string>();
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

  /** An element as it would be had some operations never been written. */
  elementWithout(collection: string, id: string, operations: ReadonlySet<string>): Element | undefined {
    const entries = this.#logs.get(collection)?.get(id)?.entries ?? [];
    const rest = entries.filter((entry) => !operations.has(entry.operation.id));
    return foldElement(rest, this.#around())?.element;
  }

  /** The document as of now; later operations do not change it. */
  document(): FoldedDocument {
    this.#foldMarked();
    const { records, findings } = foldRecords(this.#applied(this.#records));
    const created = this.#applied(this.#creates).map((entry) => entry.operation);
    created.sort(compareOperations);
    return {
      doc: this.doc,
      ...(created[0] ? { created: creation(created[0]) } : {}),
      collections: new Map(this.#collections),
      records,
      replicas: sortedByKey(
        this.#replicas,
        ({ last, count, hlc }): ReplicaProgress => ({ last, count, hlc }),
      ),
      findings: sortFindings([...this.#allFindings(), ...createdTwice(created), ...findings]),
    };
  }

  #takeOne(stored: StoredOperation): void {
    const found = inspectOperation(stored);
    if (found.state === 'bad') this.#refuse(stored, found.problem);
    else if (this.#isOurs(found) && this.#isNew(found)) this.#enter(found);
  }

  #refuse(stored: StoredOperation, problem: OperationProblem): void {
    const id: unknown = (stored as { readonly id?: unknown } | null)?.id;
    const ids = typeof id === 'string' ? [id] : [];
    this.#findings.push({ code: 'bad-operation', where: problem.path, ids, reason: problem.code });
  }

  #isOurs(found: Sound): boolean {
    const doc: unknown = found.stored['doc'];
    if (doc === this.doc || typeof doc !== 'string') return true;
    this.#findings.push({ code: 'other-document', where: doc, ids: [found.stored.id] });
    return false;
  }

  /** Files it under its id; false when the very same operation is there already. */
  #isNew({ stored, id }: Sound): boolean {
    const arrival = this.#stored.add(stored);
    if (arrival === 'repeated') return false;
    if (arrival === 'conflicting') this.#conflicting.add(stored.id);
    else this.#noteProgress(id);
    this.#noteClock(id, stored['hlc']);
    for (const log of this.#missed.get(stored.id) ?? []) this.#marked.add(log);
    this.#missed.delete(stored.id);
    return true;
  }

  #noteProgress({ replica, seq }: OperationId): void {
    const progress = this.#replicas.get(replica);
    if (!progress) this.#replicas.set(replica, { last: seq, count: 1, hlc: HLC_ZERO });
    else {
      progress.last = Math.max(progress.last, seq);
      progress.count += 1;
    }
  }

  #noteClock({ replica }: OperationId, hlc: unknown): void {
    const progress = this.#replicas.get(replica)!;
    if (typeof hlc === 'string' && hlc > progress.hlc && isHlc(hlc)) progress.hlc = hlc;
  }

  #enter(found: Sound): void {
    if (found.state !== 'known') {
      this.#setAside(found);
      return;
    }
    const freed = this.#groups.arrive(found);
    const { kind } = found.operation;
    if (kind === 'job.create') this.#creates.push(found);
    else if (kind === 'record.append') this.#records.push(found);
    else this.#logOf(found).entries.push(found);
    this.#mark(found);
    for (const member of freed) this.#mark(member);
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

  #mark(entry: Entry): void {
    const { kind } = entry.operation;
    if (kind !== 'job.create' && kind !== 'record.append') this.#marked.add(this.#logOf(entry));
  }

  #logOf({ target }: Entry): ElementLog {
    const { collection, element: id } = target;
    const logs = this.#logs.get(collection) ?? new Map<string, ElementLog>();
    if (logs.size === 0) this.#logs.set(collection, logs);
    const log = logs.get(id) ?? { collection, id, entries: [] };
    if (log.entries.length === 0) logs.set(id, log);
    return log;
  }

  #applied(entries: readonly Entry[]): Entry[] {
    return entries.filter((entry) => !this.#groups.held.has(entry));
  }

  #around(): Surroundings {
    return { held: this.#groups.held, isKnown: (id) => this.#stored.has(id) };
  }

  #foldMarked(): void {
    const fresh = new Map<string, Map<string, Element>>();
    const around = this.#around();
    for (const log of this.#marked) {
      const folded = foldElement(log.entries, around);
      if (!folded) continue;
      this.#noteFindings(log, folded.findings);
      const { collection } = log;
      if (!fresh.has(collection)) fresh.set(collection, new Map(this.#collections.get(collection)));
      fresh.get(collection)!.set(log.id, folded.element);
    }
    this.#marked.clear();
    for (const [name, elements] of fresh) this.#replaceCollection(name, elements);
  }

  #noteFindings(log: ElementLog, findings: readonly LogFinding[]): void {
    if (findings.length > 0) this.#elementFindings.set(log, findings);
    else this.#elementFindings.delete(log);
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
    this.#collections.set(name, grown ? sortedByKey(elements, (element) => element) : elements);
    if (!known) this.#collections = sortedByKey(this.#collections, (collection) => collection);
  }

  #allFindings(): LogFinding[] {
    const conflicting = [...this.#conflicting].map(
      (id): LogFinding => ({ code: 'conflicting-duplicate', where: '', ids: [id] }),
    );
    const ofElements = [...this.#elementFindings.values()].flat();
    return [...this.#findings, ...conflicting, ...this.#groups.findings(), ...ofElements];
  }
}

interface Progress {
  last: number;
  count: number;
  hlc: string;
}

function creation({ id, hlc, author, value }: Operation): Created {
  return { id, hlc, author, value };
}

function createdTwice(creates: readonly Operation[]): LogFinding[] {
  if (creates.length < 2) return [];
  return [{ code: 'created-twice', where: 'job/-', ids: creates.map((operation) => operation.id) }];
}

function sortedByKey<T, U>(map: ReadonlyMap<string, T>, shape: (value: T) => U): Map<string, U> {
  const sorted = [...map].sort(([a], [b]) => (a < b ? -1 : 1));
  return new Map(sorted.map(([key, value]) => [key, shape(value)]));
}
