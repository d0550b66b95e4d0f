/** What begins a job: its creation and all that is known of it from the start, as one group. */
import { type Edit, fold, type Operation, type Writer, writeGroup } from '@firstfire/job';

export function firstOperations(edits: readonly Edit[], writer: Writer): readonly Operation[] {
  const written = writeGroup(fold([], writer.doc), edits, writer);
  if (!written.ok) throw new Error(written.issues.map(({ code }) => code).join(', '));
  return written.operations;
}
