/** Work as files: everything in one, and files brought in. What a file holds is noted, so that nobody is reminded of it. */
import { type FileIssue, MAX_JOBS_LENGTH, readJobsFile, writeJobFile, writeJobsFile } from '@firstfire/job';
import type { Shop } from './shop.ts';

type Source = Pick<Shop, 'storage' | 'listed' | 'operations'>;

export interface TakenOut {
  readonly text: string;
  /** How many operations of each document it holds. */
  readonly counts: Readonly<Record<string, number>>;
}

/** Everything: the jobs, those that are in memory only, and the libraries. */
export async function everything(shop: Source): Promise<TakenOut> {
  const kept = await shop.storage.documents().catch(() => []);
  const docs = new Set([...kept, ...(shop.listed.get() ?? []).map(({ doc }) => doc)]);
  const logs = await Promise.all(
    [...docs].sort().map(async (doc) => [doc, await shop.operations(doc)] as const),
  );
  return {
    text: writeJobsFile(logs.map(([, operations]) => operations)),
    counts: Object.fromEntries(logs.map(([doc, { length }]) => [doc, length])),
  };
}

/** One job, as its job file. */
export async function alone(doc: string, shop: Pick<Shop, 'operations'>): Promise<TakenOut> {
  const operations = await shop.operations(doc);
  return { text: writeJobFile(operations), counts: { [doc]: operations.length } };
}

export type BroughtIn =
  | { readonly ok: true; readonly jobs: number; readonly added: number; readonly leftOut: number }
  | { readonly ok: false; readonly issue: FileIssue };

/** Unites what a file holds with what is here. A file that cannot be read changes nothing. */
export async function bringIn(file: File, shop: Pick<Shop, 'take'>): Promise<BroughtIn> {
  const place = { line: 1, column: 1, path: '' };
  if (file.size > MAX_JOBS_LENGTH)
    return { ok: false, issue: { code: 'too-large', place, found: file.size, expected: MAX_JOBS_LENGTH } };
  const read = readJobsFile(await file.text());
  if (!read.ok) return { ok: false, issue: read.issues[0] ?? { code: 'not-json', place } };
  let added = 0;
  const jobs = read.jobs.filter(({ document }) => document.doc !== '');
  for (const { document, operations } of jobs) added += await shop.take(document.doc, operations);
  const leftOut = read.jobs
    .flatMap(({ findings }) => findings)
    .filter(({ code }) => code === 'bad-operation').length;
  return { ok: true, jobs: jobs.length, added, leftOut };
}
