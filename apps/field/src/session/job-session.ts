/**
 * One job open on this device. An edit is folded and shown at once; it counts as saved only when the device has it.
 * What could not be stored yet stays in the outbox, is tried again, and is never dropped.
 */
import {
  type Edit,
  EMPTY_HISTORY,
  type FoldedDocument,
  type History,
  type HistoryResult,
  type JobView,
  jobViewOf,
  KeptStudy,
  recorded,
  redo,
  type StoredOperation,
  type Study,
  study,
  undo,
  type WriteIssue,
  type WriteResult,
  type Writer,
  writeGroup,
} from '@firstfire/job';
import type { Summary } from '../store/database.ts';
import type { Shop } from '../store/shop.ts';
import { Signal } from '../store/signal.ts';
import { type FieldAt, type Written, writtenTo } from './field-history.ts';
import { JobLog } from './job-log.ts';
import type { Outbox, Saved } from './outbox.ts';
import { summed } from './summary.ts';
import { today } from './today.ts';

export { today } from './today.ts';

/** The job at one moment: an edit makes another. */
export interface Moment {
  readonly document: FoldedDocument;
  readonly view: JobView;
  /** By the guards alone, as quick as a screen repaints. Made when it is first asked for. */
  readonly study: Study;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Counts the changes. */
  readonly version: number;
}

export interface Opened {
  readonly doc: string;
  readonly replica: string;
  readonly operations: readonly StoredOperation[];
  /** What a snapshot says that they give. */
  readonly known?: FoldedDocument;
  readonly shop: Pick<Shop, 'outbox' | 'tabs' | 'renewReplica'>;
}

export class JobSession {
  readonly doc: string;
  readonly now: Signal<Moment>;
  readonly saved: Signal<Saved>;
  /** Why the last undo or redo was refused. */
  readonly refused = new Signal<WriteIssue | undefined>(undefined);
  readonly #shop: Opened['shop'];
  readonly #log: JobLog;
  readonly #outbox: Outbox;
  #replica: string;
  readonly #kept = new KeptStudy();
  #history: History = EMPTY_HISTORY;
  #changed = 0;

  constructor({ doc, replica, operations, known, shop }: Opened) {
    this.doc = doc;
    this.#replica = replica;
    this.#shop = shop;
    this.#log = new JobLog(doc, operations, known);
    this.#note(operations);
    this.now = new Signal(this.#moment(0));
    this.#outbox = shop.outbox(doc);
    this.saved = this.#outbox.saved;
    shop.tabs.heard((of, told) => {
      if (of === doc) this.receive(told);
    });
  }

  /** Which installation this session writes as. */
  get replica(): string {
    return this.#replica;
  }

  /** Writes edits as one group; the issues when they are refused. */
  edit(edits: readonly Edit[]): readonly WriteIssue[] {
    const written = this.#asOneself((writer) => writeGroup(this.#log.document(), edits, writer));
    if (!written.ok) return written.issues;
    this.#history = recorded(this.#history, written.operations);
    this.#put(written.operations);
    return [];
  }

  undo(): readonly WriteIssue[] {
    return this.#step(undo, 'done');
  }

  redo(): readonly WriteIssue[] {
    return this.#step(redo, 'undone');
  }

  /** Shows the job as it would be, while something is turned or dragged: nothing is written. Without a view, as it is. */
  show(view?: JobView): void {
    const now = this.now.get();
    this.now.set(view === undefined ? this.#moment(now.version) : this.#withStudy({ ...shallow(now), view }));
  }

  /** By the guards alone. What has not changed since the last one is not worked out again. */
  study(view: JobView): Study {
    return study(view, { today: today(), uncertainty: false, kept: this.#kept });
  }

  /** Takes in what another tab, a file or the second copy brings. */
  receive(operations: readonly StoredOperation[]): void {
    const fresh = operations.filter((one) => !this.#log.has(one));
    if (fresh.length === 0) return;
    this.#fold(fresh);
    this.now.set(this.#moment(this.now.get().version + 1));
  }

  /** Every operation of the job, those not yet stored too: what an export writes. */
  async operations(): Promise<readonly StoredOperation[]> {
    return [...this.#log.all()];
  }

  /** Everything ever written to a reading, the latest first. */
  written(at: FieldAt): readonly Written[] {
    return writtenTo(this.#log.all(), at);
  }

  /** Folds what was shown from a snapshot, and shows it anew where the snapshot was wrong; false then. */
  check(): boolean {
    const isRight = this.#log.check();
    if (!isRight) this.now.set(this.#moment(this.now.get().version + 1));
    return isRight;
  }

  /** What the list of jobs says of it. */
  summary(): Summary {
    const { view, study: found } = this.now.get();
    return summed({
      doc: this.doc,
      view,
      study: found,
      changed: this.#changed,
      operations: this.#log.all().length,
    });
  }

  #fold(operations: readonly StoredOperation[]): void {
    this.#log.take(operations);
    this.#note(operations);
  }

  #note(operations: readonly StoredOperation[]): void {
    for (const { hlc } of operations) {
      const at = typeof hlc === 'string' ? Number.parseInt(hlc.slice(0, 15), 10) : 0;
      if (at > this.#changed) this.#changed = at;
    }
  }

  #step(take: typeof undo, from: 'done' | 'undone'): readonly WriteIssue[] {
    const result = this.#asOneself((writer) => take(this.#log.folding(), this.#history, writer));
    const [issue] = result.ok ? [] : result.issues;
    this.refused.set(issue);
    if (!result.ok) {
      this.#pass(from);
      return result.issues;
    }
    this.#history = result.history;
    if (result.operations.length === 0) this.now.set(this.#moment(this.now.get().version + 1));
    this.#put(result.operations);
    return [];
  }

  /** What cannot be taken back any more is passed over, so that the step before it can be. */
  #pass(from: 'done' | 'undone'): void {
    const group = this.#history[from].at(-1);
    const rest = this.#history[from].slice(0, -1);
    const written = this.#history.written.filter((one) => one !== group);
    this.#history = { ...this.#history, [from]: rest, written };
    this.now.set(this.#moment(this.now.get().version + 1));
  }

  /** Writes; where somebody else has written under this replica's name, under a new one. */
  #asOneself<T extends WriteResult | HistoryResult>(write: (writer: Writer) => T): T {
    const result = write(this.#writer());
    if (result.ok || !result.issues.some(({ code }) => code === 'replica-cloned')) return result;
    this.#replica = this.#shop.renewReplica();
    return write(this.#writer());
  }

  #put(operations: readonly StoredOperation[]): void {
    if (operations.length === 0) return;
    this.#fold(operations);
    this.now.set(this.#moment(this.now.get().version + 1));
    void this.#outbox.send(operations);
  }

  #writer(): Writer {
    return { doc: this.doc, replica: this.#replica, author: 'me', now: Date.now() };
  }

  #moment(version: number): Moment {
    const document = this.#log.document();
    return this.#withStudy({
      document,
      view: jobViewOf(document),
      canUndo: this.#history.done.length > 0,
      canRedo: this.#history.undone.length > 0,
      version,
    });
  }

  /** A study costs more than everything else together: it is made once, when somebody looks. */
  #withStudy(moment: Omit<Moment, 'study'>): Moment {
    let found: Study | undefined;
    const made = (): Study => {
      found ??= this.study(moment.view);
      return found;
    };
    return {
      ...moment,
      get study() {
        return made();
      },
    };
  }
}

function shallow({ document, canUndo, canRedo, version }: Moment): Omit<Moment, 'study' | 'view'> {
  return { document, canUndo, canRedo, version };
}
