/**
 * One job open on this device. An edit is folded and shown at once; it counts as saved only when the device has it.
 * What could not be stored yet stays here, is tried again, and is never dropped.
 */
import {
  type Edit,
  EMPTY_HISTORY,
  type FoldedDocument,
  Folding,
  type History,
  type JobView,
  jobViewOf,
  recorded,
  redo,
  type StoredOperation,
  type Study,
  study,
  undo,
  type WriteIssue,
  type Writer,
  writeGroup,
} from '@firstfire/job';
import { byUrgency } from '@firstfire/reference';
import { measureNext } from '../next/measure-next.ts';
import type { Summary } from '../store/database.ts';
import type { Shop } from '../store/shop.ts';
import { Signal } from '../store/signal.ts';
import { namesOf } from '../store/summaries.ts';
import { Outbox, type Saved } from './outbox.ts';

/** The job at one moment: an edit makes another. */
export interface Moment {
  readonly document: FoldedDocument;
  readonly view: JobView;
  /** By the guards alone, as quick as a screen repaints. */
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
  readonly shop: Shop;
}

export class JobSession {
  readonly doc: string;
  readonly now: Signal<Moment>;
  readonly saved: Signal<Saved>;
  readonly #replica: string;
  readonly #shop: Shop;
  readonly #folding: Folding;
  readonly #outbox: Outbox;
  #history: History = EMPTY_HISTORY;
  #count: number;

  constructor({ doc, replica, operations, shop }: Opened) {
    this.doc = doc;
    this.#replica = replica;
    this.#shop = shop;
    this.#folding = new Folding(doc);
    this.#folding.take(operations);
    this.now = new Signal(this.#moment(0));
    this.#count = operations.length;
    this.#outbox = new Outbox({ doc, replica, shop, stored: () => void shop.keep(this.summary()) });
    this.saved = this.#outbox.saved;
    shop.tabs.heard((of, told) => {
      if (of === doc) this.receive(told);
    });
  }

  /** Writes edits as one group; the issues when they are refused. */
  edit(edits: readonly Edit[]): readonly WriteIssue[] {
    const written = writeGroup(this.#folding.document(), edits, this.#writer());
    if (!written.ok) return written.issues;
    this.#history = recorded(this.#history, written.operations);
    this.#put(written.operations);
    return [];
  }

  undo(): readonly WriteIssue[] {
    return this.#step(undo);
  }

  redo(): readonly WriteIssue[] {
    return this.#step(redo);
  }

  /** Takes in what another tab or a file brings. */
  receive(operations: readonly StoredOperation[]): void {
    this.#folding.take(operations);
    this.now.set(this.#moment(this.now.get().version + 1));
  }

  /** Every operation of the job, those not yet stored too: what an export writes. */
  async operations(): Promise<readonly StoredOperation[]> {
    const stored = await this.#shop.storage.read(this.doc).catch(() => []);
    return [...stored, ...this.#outbox.waiting()];
  }

  /** What the list of jobs says of it. */
  summary(): Summary {
    const { view, study: found } = this.now.get();
    const worst = found.lines.flatMap((line) => line.findings).sort(byUrgency)[0];
    const next = measureNext(found)[0]?.path;
    return {
      doc: this.doc,
      ...namesOf(view),
      changed: Date.now(),
      operations: this.#count,
      ...(next === undefined ? {} : { next }),
      ...(worst === undefined
        ? {}
        : {
            worst: {
              rule: worst.rule,
              verdict: worst.verdict,
              ...(worst.margin === undefined ? {} : { margin: worst.margin }),
            },
          }),
    };
  }

  #step(take: typeof undo): readonly WriteIssue[] {
    const result = take(this.#folding, this.#history, this.#writer());
    if (!result.ok) return result.issues;
    this.#history = result.history;
    this.#put(result.operations);
    return [];
  }

  #put(operations: readonly StoredOperation[]): void {
    if (operations.length === 0) return;
    this.#folding.take(operations);
    this.#count += operations.length;
    this.now.set(this.#moment(this.now.get().version + 1));
    this.#outbox.send(operations);
  }

  #writer(): Writer {
    return { doc: this.doc, replica: this.#replica, author: 'me', now: Date.now() };
  }

  #moment(version: number): Moment {
    const document = this.#folding.document();
    const view = jobViewOf(document);
    return {
      document,
      view,
      study: study(view, { today: today(), uncertainty: false }),
      canUndo: this.#history.done.length > 0,
      canRedo: this.#history.undone.length > 0,
      version,
    };
  }
}

/** The local day, ISO. */
export function today(): string {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
