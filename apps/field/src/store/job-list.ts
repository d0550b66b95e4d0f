/** The list of jobs as pages see it: read from the device, what is only in memory with it, studied when there is time. */
import type { StoredOperation } from '@firstfire/job';
import type { Summary } from './database.ts';
import type { DeviceStorage } from './device-storage.ts';
import { isJob } from './documents.ts';
import { whenIdle } from './idle.ts';
import type { DeviceMarks } from './marks.ts';
import { remember } from './remembered.ts';
import { Signal } from './signal.ts';
import { Turn } from './turn.ts';

export interface JobListParts {
  readonly storage: DeviceStorage;
  readonly marks: DeviceMarks;
  readonly operations: (doc: string) => Promise<readonly StoredOperation[]>;
  /** What the device has not confirmed yet, by document. */
  readonly waiting: () => readonly (readonly [string, readonly StoredOperation[]])[];
}

export class JobList {
  readonly now = new Signal<readonly Summary[] | undefined>(undefined);
  readonly #parts: JobListParts;
  readonly #turn = new Turn(() => this.#read());

  constructor(parts: JobListParts) {
    this.#parts = parts;
  }

  refresh(): Promise<void> {
    return this.#turn.take();
  }

  /** Keeps what is said of a job, counted by what the device has of it. */
  async keep(summary: Summary): Promise<void> {
    const { storage } = this.#parts;
    const operations = await storage.count(summary.doc);
    const { keep } = await import('./summaries.ts');
    await keep(storage, { ...summary, operations });
  }

  async #read(): Promise<void> {
    const { storage, marks, waiting } = this.#parts;
    const { listJobs, marked, summaryOf } = await import('./summaries.ts');
    const kept = await listJobs(storage).catch(() => this.now.get() ?? []);
    const inMemory = waiting()
      .filter(([doc, some]) => isJob(doc) && some.length > 0 && kept.every((one) => one.doc !== doc))
      .map(([doc, some]) => summaryOf(doc, some));
    this.now.set(marked([...kept, ...inMemory], marks.now.get()));
    await this.#noteCount();
    this.#studyRest();
  }

  /** Remembers how many jobs there are, here and at the server. An empty list is never taken for the truth. */
  async #noteCount(): Promise<void> {
    const jobs = this.now.get() ?? [];
    if (jobs.length === 0) return;
    remember({ jobs: jobs.length, changed: Math.max(0, ...jobs.map((job) => job.changed)) });
    const { marks } = this.#parts;
    if (marks.now.get().jobs !== jobs.length) await marks.change(() => ({ jobs: jobs.length }));
  }

  /** Jobs of which no study has been made yet, such as imported ones: one at a time. */
  #studyRest(): void {
    const next = this.now.get()?.find((one) => !one.studied && one.deleted === undefined);
    if (next === undefined || this.#parts.storage.ill.get() !== undefined) return;
    whenIdle(() => this.#study(next.doc));
  }

  async #study(doc: string): Promise<void> {
    const { summedFrom } = await import('../session/summary.ts');
    await this.keep(summedFrom(doc, await this.#parts.operations(doc)));
    await this.refresh();
  }
}
