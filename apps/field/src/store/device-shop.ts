/** The shop on this device: what each part says of a job, brought together. */
import { contentText, type Edit, type StoredOperation, unite } from '@firstfire/job';
import type { JobSession } from '../session/job-session.ts';
import { Outbox } from '../session/outbox.ts';
import type { Summary } from './database.ts';
import type { DeviceStorage } from './device-storage.ts';
import { isJob } from './documents.ts';
import { whenIdle } from './idle.ts';
import { JobList } from './job-list.ts';
import { type Jots, takeIn } from './jots.ts';
import { askToLast } from './lasting.ts';
import { DeviceMarks, type Marks, overdue, without } from './marks.ts';
import { logsToKeep, onlyCopied } from './rebuild.ts';
import { lostOf, type Remembered, remember, rememberedIn } from './remembered.ts';
import { QUIET_MS } from './remind.ts';
import { freshId, ownPlace, renewAt, replicaAt } from './replica.ts';
import type { SecondCopy } from './second-copy.ts';
import type { Shop } from './shop.ts';
import type { ShopParts } from './shop-parts.ts';
import { Signal } from './signal.ts';
import type { Tabs } from './tabs.ts';

/** Without an edit for so long, a job is at rest, ms. */
const SETTLED_MS = 8000;

export class DeviceShop implements Shop {
  readonly storage: DeviceStorage;
  readonly copy: SecondCopy;
  readonly tabs: Tabs;
  readonly listed: Signal<readonly Summary[] | undefined>;
  readonly marks: Signal<Marks>;
  readonly lost = new Signal<Remembered | undefined>(undefined);
  readonly cameBack = new Signal(0);
  /** Resolves when the first look at the device is over. */
  readonly ready: Promise<void>;
  readonly #cookie: () => string;
  readonly #sessions = new Map<string, Promise<JobSession>>();
  readonly #outboxes = new Map<string, Outbox>();
  readonly #place = ownPlace();
  readonly #remembers: DeviceMarks;
  readonly #list: JobList;
  readonly #jots: Jots;
  /** Resolves when what a tab that died had not yet stored is taken in. */
  readonly #jotted: Promise<void>;
  #replica: Promise<string>;
  #settling: ReturnType<typeof setTimeout> | undefined;

  constructor({ storage, copy, tabs, jots, cookie }: ShopParts) {
    this.storage = storage;
    this.copy = copy;
    this.tabs = tabs;
    this.#cookie = cookie;
    this.#jots = jots;
    this.#remembers = new DeviceMarks(storage);
    this.#list = new JobList({
      storage,
      marks: this.#remembers,
      operations: (doc) => this.operations(doc),
      waiting: () => [...this.#outboxes].map(([doc, outbox]) => [doc, outbox.waiting()]),
    });
    this.marks = this.#remembers.now;
    this.listed = this.#list.now;
    this.#replica = this.#place.then((place) => replicaAt(storage, place));
    this.tabs.heard(() => void this.#remembers.read().then(() => this.refresh()));
    this.#jotted = takeIn(jots, (doc) => this.outbox(doc));
    this.ready = this.#start();
  }

  session(doc: string): Promise<JobSession> {
    const known = this.#sessions.get(doc);
    if (known !== undefined) return known;
    const opened = this.#open(doc);
    this.#sessions.set(doc, opened);
    opened.catch(() => this.#sessions.delete(doc));
    return opened;
  }

  outbox(doc: string): Outbox {
    const known = this.#outboxes.get(doc);
    if (known !== undefined) return known;
    const made = new Outbox({
      jot: (waiting) => this.#jots.put(doc, waiting),
      store: (operations) => this.#store(doc, operations),
      stored: () => void this.#stored(doc),
      // The second copy may have room where the database has none.
      refused: (operations) => void this.copy.add(doc, operations),
    });
    this.#outboxes.set(doc, made);
    return made;
  }

  renewReplica(): string {
    const made = freshId('r');
    this.#replica = this.#place.then(async (place) => {
      await renewAt(this.storage, place, made);
      return made;
    });
    return made;
  }

  async begin(edits: readonly Edit[]): Promise<string> {
    const doc = freshId('job');
    const [replica, { firstOperations }] = await Promise.all([
      this.#replica,
      import('../session/first-operations.ts'),
    ]);
    const writer = { doc, replica, author: 'me', now: Date.now() };
    await this.outbox(doc).send(firstOperations([{ type: 'create' }, ...edits], writer));
    await this.refresh();
    return doc;
  }

  async take(doc: string, operations: readonly StoredOperation[]): Promise<number> {
    const there = new Set((await this.operations(doc)).map(contentText));
    const fresh = unite(operations).filter((one) => !there.has(contentText(one)));
    if (this.marks.get().deleted[doc] !== undefined) await this.bringBack(doc);
    const open = this.#sessions.get(doc);
    if (open !== undefined) (await open).receive(fresh);
    // With nothing new, what is on its way is still waited for.
    await this.outbox(doc).send(fresh);
    await this.refresh();
    return fresh.length;
  }

  /** What the database has, else what the second copy has; and what waits for the database. */
  async operations(doc: string): Promise<readonly StoredOperation[]> {
    const kept = await this.storage.read(doc).catch(async () => (await this.copy.read(doc)).operations);
    return unite(kept, this.#outboxes.get(doc)?.waiting() ?? []);
  }

  refresh(): Promise<void> {
    return this.#list.refresh();
  }

  async remove(doc: string): Promise<void> {
    await this.#mark(({ deleted }) => ({ deleted: { ...deleted, [doc]: Date.now() } }), doc);
  }

  async bringBack(doc: string): Promise<void> {
    await this.#mark(({ deleted }) => ({ deleted: without(deleted, doc) }), doc);
  }

  async exported(counts: Readonly<Record<string, number>>): Promise<void> {
    await this.#mark(({ exported }) => ({ exported: { ...exported, ...counts }, exportedAt: Date.now() }));
  }

  async quiet(): Promise<void> {
    await this.#mark(() => ({ quietUntil: Date.now() + QUIET_MS }));
  }

  async rebuild(): Promise<boolean> {
    const logs = await logsToKeep(this.copy, await Promise.all(this.#sessions.values()));
    if (logs === undefined) return false;
    await this.storage.destroy();
    for (const [doc, operations] of logs) await this.outbox(doc).send(operations);
    this.renewReplica();
    await this.refresh();
    return true;
  }

  async forgetLost(): Promise<void> {
    this.lost.set(undefined);
    remember({ jobs: 0, changed: Date.now() });
    await this.#mark(() => ({ jobs: 0 }));
  }

  /** Reads again what other tabs may have written unheard, and tries again what was refused. */
  async lookAgain(): Promise<void> {
    for (const [doc, opened] of this.#sessions) {
      const [session, operations] = await Promise.all([opened, this.storage.read(doc).catch(() => [])]);
      session.receive(operations);
    }
    for (const outbox of this.#outboxes.values()) if (outbox.waiting().length > 0) void outbox.retry();
    await this.#remembers.read();
    await this.refresh();
  }

  close(): void {
    clearTimeout(this.#settling);
    for (const outbox of this.#outboxes.values()) outbox.close();
    this.tabs.close();
    this.storage.close();
  }

  async #open(doc: string): Promise<JobSession> {
    await this.#jotted;
    // What a study needs is fetched when the first job is opened: the list answers without it.
    const [operations, replica, { JobSession }, { fromSnapshot }] = await Promise.all([
      this.operations(doc),
      this.#replica,
      import('../session/job-session.ts'),
      import('./snapshots.ts'),
    ]);
    const known = await fromSnapshot(this.storage, doc, operations);
    const isHurt = (this.storage.bad.get().get(doc) ?? 0) > 0;
    const session = new JobSession({
      doc,
      // A log with holes may lack what this replica wrote last: its numbers are not used again.
      replica: isHurt ? this.renewReplica() : replica,
      operations,
      ...(known === undefined ? {} : { known }),
      shop: this,
    });
    this.#later(session);
    whenIdle(() => this.#compare(session, operations));
    return session;
  }

  /** When there is time: a snapshot that was shown is held against the log, and one put by for the next time. */
  #later(session: JobSession): void {
    whenIdle(async () => {
      const { dropSnapshot, putSnapshot } = await import('./snapshots.ts');
      if (!session.check()) await dropSnapshot(this.storage, session.doc);
      const { document } = session.now.get();
      await putSnapshot(this.storage, document, (await session.operations()).length);
    });
  }

  /** After a while without edits the snapshot follows. */
  #settle(session: JobSession): void {
    clearTimeout(this.#settling);
    this.#settling = setTimeout(() => this.#later(session), SETTLED_MS);
  }

  /** Holds the second copy against the log; what only the copy has comes back. */
  async #compare(session: JobSession, operations: readonly StoredOperation[]): Promise<void> {
    const { doc } = session;
    const missing = await this.copy.bringInStep(doc, operations);
    const there = new Set((await session.operations()).map(contentText));
    const back = missing.filter((one) => !there.has(contentText(one)));
    if (back.length === 0) return;
    session.receive(back);
    this.cameBack.set(this.cameBack.get() + 1);
    await this.outbox(doc).send(back);
  }

  async #start(): Promise<void> {
    const cookie = rememberedIn(this.#cookie());
    await Promise.all([this.#remembers.read(), this.#jotted]);
    const kept = await this.storage.documents().catch(() => undefined);
    // The list waits for the second copy only where the database has nothing to show.
    if (kept !== undefined && kept.length > 0) await this.refresh();
    const logs = await onlyCopied(this.copy, kept ?? []);
    for (const [doc, operations] of logs) await this.outbox(doc).send(operations);
    const back = logs.size;
    if (back > 0) {
      this.renewReplica();
      this.cameBack.set(this.cameBack.get() + back);
    }
    if (back > 0 || this.listed.get() === undefined) await this.refresh();
    const found = this.listed.get()?.length ?? 0;
    if (kept !== undefined) this.lost.set(lostOf(found, { marked: this.marks.get().jobs, cookie }));
    for (const doc of overdue(this.marks.get(), Date.now())) await this.#clear(doc).catch(() => {});
  }

  async #store(doc: string, operations: readonly StoredOperation[]): Promise<void> {
    await this.storage.take(doc, operations);
    this.tabs.tell(doc, operations);
    void this.copy.add(doc, operations);
    this.lost.set(undefined);
  }

  /** Everything written so far is kept: the list and what the device remembers follow. */
  async #stored(doc: string): Promise<void> {
    try {
      const session = await this.#sessions.get(doc);
      if (session !== undefined && isJob(doc)) await this.#list.keep(session.summary());
      if (session !== undefined) this.#settle(session);
      await askToLast(this.#remembers);
      await this.refresh();
    } catch {
      // Caches and marks: made anew when the list is next read.
    }
  }

  /** Clears a deleted job away. The mark goes last, so that a clearing cut off is taken up again. */
  async #clear(doc: string): Promise<void> {
    await this.copy.remove(doc);
    await this.storage.erase(doc);
    const jobs = Math.max(0, (this.listed.get()?.length ?? 1) - 1);
    await this.#mark(({ deleted, exported }) => ({
      deleted: without(deleted, doc),
      exported: without(exported, doc),
      jobs,
    }));
  }

  async #mark(change: (marks: Marks) => Partial<Marks>, doc?: string): Promise<void> {
    await this.#remembers.change(change);
    if (doc !== undefined) this.tabs.tell(doc, []);
    await this.refresh();
  }
}
