/** The list of jobs: a line for each, kept beside the log and made anew where it is missing or behind. */
import { fold, jobViewOf, type StoredOperation } from '@firstfire/job';
import type { Summary } from './database.ts';
import type { DeviceStorage } from './device-storage.ts';

export async function listJobs(storage: DeviceStorage): Promise<readonly Summary[]> {
  const [docs, kept] = await Promise.all([
    storage.documents(),
    storage.retry((database) => database.getAll('summaries')),
  ]);
  const known = new Map(kept.map((one) => [one.doc, one]));
  const list: Summary[] = [];
  for (const doc of docs) {
    const one = known.get(doc) ?? (await made(storage, doc));
    list.push(one);
  }
  return list.sort((a, b) => b.changed - a.changed);
}

async function made(storage: DeviceStorage, doc: string): Promise<Summary> {
  const summary = summaryOf(doc, await storage.read(doc));
  await keep(storage, summary);
  return summary;
}

export async function keep(storage: DeviceStorage, summary: Summary): Promise<void> {
  await storage.retry((database) => database.put('summaries', summary));
}

/** What can be said of a job without a study. */
export function summaryOf(doc: string, operations: readonly StoredOperation[]): Summary {
  const view = jobViewOf(fold(operations, doc));
  const text = (collection: string, field: string): string => {
    const value = view.record(collection, '-').reading(field)?.value;
    return typeof value === 'string' ? value : '';
  };
  return {
    doc,
    name: text('job', 'name'),
    stage: text('job', 'stage') || 'survey',
    place: [text('site', 'place'), text('site', 'region'), text('site', 'country')]
      .filter(Boolean)
      .join(', '),
    archived: text('job', 'archived') === 'yes',
    changed: Math.max(0, ...operations.map((one) => Number.parseInt(String(one['hlc'] ?? '0'), 10) || 0)),
    operations: operations.length,
  };
}
