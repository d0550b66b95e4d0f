/** The job as it was before anything was read: what its parts are and how they hang together, no more. */
import type { JobView, RecordView } from '@firstfire/job';
import { RECORD_BY_COLLECTION } from '@firstfire/job';

/** Choices that say what a part is and where it belongs. All other choices are readings. */
const PLAIN = new Set([
  'job.kind',
  'job.stage',
  'site.country',
  'site.region',
  'gasSupply.fuel',
  'gasSupply.existingLoadAt',
  'heaters.planned',
  'heaters.fuel',
  'basins.use',
  'basins.where',
  'spots.where',
  'waterRuns.role',
  'pumpSpeeds.heating',
]);

/** Whether a field tells the parts of the job rather than a reading of one of them. */
export function isStructure(collection: string, field: string): boolean {
  const type = RECORD_BY_COLLECTION.get(collection)?.fields[field]?.type;
  return type === 'point' || REFERS.has(field) || PLAIN.has(`${collection}.${field}`);
}

/** Texts that name other parts by their id. */
const REFERS = new Set(['heater', 'basin', 'basins', 'heatedBy', 'rule', 'edition']);

export function blankView(view: JobView): JobView {
  const blank = (collection: string, record: RecordView): RecordView => ({
    id: record.id,
    reading: (field) => (isStructure(collection, field) ? record.reading(field) : undefined),
  });
  return {
    all: (collection) => view.all(collection).map((record) => blank(collection, record)),
    record: (collection, id) => blank(collection, view.record(collection, id)),
  };
}

/** The same for two jobs with the same parts. */
export function structureOf(view: JobView): string {
  const parts: string[] = [];
  for (const [collection, { fields }] of RECORD_BY_COLLECTION) {
    const told = Object.keys(fields).filter((field) => isStructure(collection, field));
    for (const record of view.all(collection)) {
      const words = told.map((field) => String(record.reading(field)?.value ?? ''));
      parts.push([collection, record.id, ...words].join('\u0000'));
    }
    for (const field of told) parts.push(String(view.record(collection, '-').reading(field)?.value ?? ''));
  }
  return parts.join('\u0001');
}
