/** A reading written to the job; what was marked as not to be got is got then. */
import type { Edit } from '@firstfire/job';
import type { JobSession } from '../session/job-session.ts';
import { type Made, readingOf } from './reading.ts';
import { unskip } from './skips.ts';
import type { FieldAt } from './understood.ts';

export function writeReading(session: JobSession, { collection, id, field }: FieldAt, made: Made): void {
  const { view } = session.now.get();
  const isThere = id === '-' || view.all(collection).some((one) => one.id === id);
  const element = id === '-' ? {} : { element: id };
  const set: Edit = { type: 'set', collection, ...element, field, value: readingOf(made) };
  session.edit(isThere ? [set] : [{ type: 'add', collection, element: id }, set]);
  unskip(session.doc, `${collection}/${id}/${field}`);
}

/** Worked example: `heaters/h1/input` is the field `input` of the heater `h1`. */
export function fieldAt(path: string): FieldAt {
  const [collection = '', id = '', field = ''] = path.split('/');
  return { collection, id, field };
}
