/** The list of jobs: a line for each, kept beside the log and made anew where it is missing or behind. */
import { fold, type JobView, jobViewOf, type StoredOperation } from '@firstfire/job';
import type { Summary } from './database.ts';
import type { DeviceStorage } from './device-storage.ts';
import { isJob } from './documents.ts';
import type { Marks } from './marks.ts';

export async function listJobs(storage: DeviceStorage): Promise<readonly Summary[]> {
  const [docs, kept] = await Promise.all([
    storage.documents(),
    storage.retry((database) => database.getAll('summaries')),
  ]);
  const known = new Map(kept.map((one) => [one.doc, one]));
  return Promise.all(
    docs.filter(isJob).map(async (doc) => {
      const one = known.get(doc);
      return one?.operations === (await storage.count(doc)) ? one : made(storage, doc);
    }),
  );
}

/** With what the device remembers of each, the newest first. */
export function marked(list: readonly Summary[], { deleted, exported }: Marks): readonly Summary[] {
  const all = list.map(({ deleted: _, exported: __, ...one }): Summary => {
    const gone = deleted[one.doc];
    const out = exported[one.doc];
    return {
      ...one,
      ...(gone === undefined ? {} : { deleted: gone }),
      ...(out === undefined ? {} : { exported: out }),
    };
  });
  return all.sort((a, b) => b.changed - a.changed);
}

async function made(storage: DeviceStorage, doc: string): Promise<Summary> {
  const summary = { ...summaryOf(doc, await storage.read(doc)), operations: await storage.count(doc) };
  await keep(storage, summary).catch(() => {});
  return summary;
}

export async function keep(storage: DeviceStorage, summary: Summary): Promise<void> {
  await storage.retry((database) => database.put('summaries', summary));
}

/** What can be said of a job without a study. */
export function summaryOf(doc: string, operations: readonly StoredOperation[]): Summary {
  const view = jobViewOf(fold(operations, doc));
  return {
    doc,
    ...namesOf(view),
    changed: changedAt(operations),
    operations: operations.length,
  };
}

/** Name, stage and place of a job, as the list shows them. */
export function namesOf(view: JobView): Pick<Summary, 'name' | 'stage' | 'place' | 'archived'> {
  const text = (collection: string, field: string): string => {
    const value = view.record(collection, '-').reading(field)?.value;
    return typeof value === 'string' ? value : '';
  };
  return {
    name: text('job', 'name'),
    stage: text('job', 'stage') || 'survey',
    place: [text('site', 'locality'), text('site', 'region'), text('site', 'country')]
      .filter(Boolean)
      .join(', '),
    archived: text('job', 'archived') === 'yes',
  };
}

/** The latest clock of a log, ms since 1970: its first part is wall time. */
export function changedAt(operations: readonly StoredOperation[]): number {
  return operations.reduce((latest, { hlc }) => Math.max(latest, wallTime(hlc)), 0);
}

function wallTime(hlc: unknown): number {
  return typeof hlc === 'string' ? Number.parseInt(hlc.split('-')[0] ?? '', 10) || 0 : 0;
}
