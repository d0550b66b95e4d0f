/**
 * Jobs as files: one job as its job file, or all of them in one file that holds the job files. Bringing a file in
 * unites by operation, so that nothing here is written over; a file that cannot be read changes nothing.
 *
 *     { "format": "firstfire-jobs", "version": 1, "jobs": [ job file, … ] }
 */
import { type FileIssue, readJobFile, type StoredOperation, writeJobFile } from '@firstfire/job';
import type { DeviceStorage } from './device-storage.ts';

export const BUNDLE_FORMAT = 'firstfire-jobs';
export const BUNDLE_VERSION = 1;

export interface Incoming {
  readonly doc: string;
  readonly operations: readonly StoredOperation[];
}

export type Read =
  | { readonly ok: true; readonly jobs: readonly Incoming[] }
  | { readonly ok: false; readonly issues: readonly FileIssue[] };

export function jobText(operations: readonly StoredOperation[]): string {
  return writeJobFile(operations);
}

export async function bundleText(storage: DeviceStorage): Promise<string> {
  const files: string[] = [];
  for (const doc of await storage.documents()) files.push(writeJobFile(await storage.read(doc)).trim());
  return `{\n"format": ${JSON.stringify(BUNDLE_FORMAT)},\n"version": ${BUNDLE_VERSION},\n"jobs": [\n${files.join(',\n')}\n]\n}\n`;
}

/** One job file or a file of many; of many, all or none. */
export function readPortable(text: string): Read {
  const files = filesIn(text);
  const jobs: Incoming[] = [];
  for (const file of files ?? [text]) {
    const read = readJobFile(file);
    if (!read.ok) return read;
    jobs.push({ doc: read.value.document.doc, operations: read.value.operations });
  }
  return { ok: true, jobs };
}

/** The job files of a file of many, each as a text of its own; undefined for anything else. */
function filesIn(text: string): readonly string[] | undefined {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof raw !== 'object' || raw === null) return undefined;
  const { format, version, jobs } = raw as Record<string, unknown>;
  if (format !== BUNDLE_FORMAT || version !== BUNDLE_VERSION || !Array.isArray(jobs)) return undefined;
  return jobs.map((job) => JSON.stringify(job));
}
