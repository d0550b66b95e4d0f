/** Everything the pages take from the device: the store, who writes, the jobs there are, the sessions open on them. */
import { type Edit, type StoredOperation, unite } from '@firstfire/job';
import type { JobSession } from '../session/job-session.ts';
import type { Summary } from './database.ts';
import { DeviceStorage } from './device-storage.ts';
import { recover } from './recover.ts';
import { type Remembered, remember, rememberedIn } from './remembered.ts';
import { freshId, ownReplica } from './replica.ts';
import { SecondCopy } from './second-copy.ts';
import { Signal } from './signal.ts';
import { Tabs } from './tabs.ts';

export interface Shop {
  readonly storage: DeviceStorage;
  readonly tabs: Tabs;
  /** Changes whenever the list of jobs may have. */
  readonly listed: Signal<readonly Summary[] | undefined>;
  /** What the device has lost and the server remembers; undefined where nothing is missing. */
  readonly lost: Signal<Remembered | undefined>;
  /** Names of jobs that came back from the second copy at this start. */
  readonly cameBack: Signal<number>;
  /** Keeps operations in the database, then in the second copy, and tells the other tabs. */
  store(doc: string, operations: readonly StoredOperation[]): Promise<void>;
  /** The session of a job; the same one for every page of it. */
  session(doc: string): Promise<JobSession>;
  /** Writes a new job; gives its document id. */
  begin(edits: readonly Edit[]): Promise<string>;
  /** Unites operations from a file or an example with what is here. */
  take(doc: string, operations: readonly StoredOperation[]): Promise<void>;
  refresh(): Promise<void>;
  /** Keeps what the list says of a job. */
  keep(summary: Summary): Promise<void>;
  /** Takes a job out of sight; it is cleared away a month later, and can be brought back until then. */
  remove(doc: string): Promise<void>;
  bringBack(doc: string): Promise<void>;
}

export function openShop(): Shop {
  return new DeviceShop();
}

class DeviceShop implements Shop {
  readonly storage = new DeviceStorage();
  readonly tabs = new Tabs();
  readonly listed = new Signal<readonly Summary[] | undefined>(undefined);
  readonly lost = new Signal<Remembered | undefined>(undefined);
  readonly cameBack = new Signal(0);
  readonly #copy = new SecondCopy();
  readonly #sessions = new Map<string, Promise<JobSession>>();
  #asked = false;
  readonly #replica: Promise<string>;

  constructor() {
    this.#replica = ownReplica(this.storage);
    this.tabs.heard((doc) => {
      if (!this.#sessions.has(doc)) void this.refresh();
    });
    void this.#start();
  }

  /** What only the second copy has comes back first; then the list is read and held against what is remembered. */
  async #start(): Promise<void> {
    const known = rememberedIn(document.cookie);
    await this.refresh();
    const back = await recover(this.storage, this.#copy).catch(() => []);
    if (back.length > 0) {
      this.cameBack.set(back.length);
      await this.refresh();
    }
    if (known !== undefined && known.jobs > 0 && this.listed.get()?.length === 0) this.lost.set(known);
  }

  async store(doc: string, operations: readonly StoredOperation[]): Promise<void> {
    await this.storage.take(doc, operations);
    this.tabs.tell(doc, operations);
    void this.#copy.add(doc, operations);
    this.lost.set(undefined);
    this.#persist();
    remember({ jobs: this.listed.get()?.length || 1, changed: Date.now() });
  }

  /** Asked once, after the first work worth keeping; a browser may say no, and the work is exported then. */
  #persist(): void {
    if (this.#asked) return;
    this.#asked = true;
    navigator.storage?.persist?.().catch(() => {});
  }

  session(doc: string): Promise<JobSession> {
    const known = this.#sessions.get(doc);
    if (known !== undefined) return known;
    const opened = this.#open(doc);
    this.#sessions.set(doc, opened);
    opened.catch(() => this.#sessions.delete(doc));
    return opened;
  }

  async #open(doc: string): Promise<JobSession> {
    // What a study needs is fetched when the first job is opened: the list answers without it.
    const [operations, replica, { JobSession }] = await Promise.all([
      this.#read(doc),
      this.#replica,
      import('../session/job-session.ts'),
    ]);
    return new JobSession({ doc, replica, operations, shop: this });
  }

  /** From the database, and from the second copy what that has more. */
  async #read(doc: string): Promise<readonly StoredOperation[]> {
    const [kept, copied] = await Promise.all([this.storage.read(doc).catch(() => []), this.#copy.read(doc)]);
    return copied.length > kept.length ? unite(kept, copied) : kept;
  }

  async begin(edits: readonly Edit[]): Promise<string> {
    const doc = freshId('job');
    const [replica, { firstOperations }] = await Promise.all([
      this.#replica,
      import('../session/first-operations.ts'),
    ]);
    const written = await this.storage.append({ doc, replica }, (pen) =>
      firstOperations([{ type: 'create' }, ...edits], { doc, replica, author: 'me', now: Date.now(), pen }),
    );
    void this.#copy.add(doc, written);
    this.#persist();
    await this.refresh();
    return doc;
  }

  async take(doc: string, operations: readonly StoredOperation[]): Promise<void> {
    await this.store(doc, operations);
    const open = this.#sessions.get(doc);
    if (open !== undefined) (await open).receive(operations);
    await this.refresh();
  }

  async keep(summary: Summary): Promise<void> {
    try {
      await this.storage.retry((database) => database.put('summaries', summary));
      await this.refresh();
    } catch {
      // A cache: it is made anew when the list is next read.
    }
  }

  async remove(doc: string): Promise<void> {
    await this.#mark(doc, Date.now());
  }

  async bringBack(doc: string): Promise<void> {
    await this.#mark(doc, undefined);
  }

  async #mark(doc: string, deleted: number | undefined): Promise<void> {
    const known = this.listed.get()?.find((one) => one.doc === doc);
    if (known === undefined) return;
    const { deleted: _, ...rest } = known;
    await this.keep(deleted === undefined ? rest : { ...rest, deleted });
  }

  async refresh(): Promise<void> {
    try {
      const { listJobs } = await import('./summaries.ts');
      this.listed.set(await listJobs(this.storage));
    } catch {
      this.listed.set([]);
    }
  }
}
