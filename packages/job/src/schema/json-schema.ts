/**
 * JSON Schema of a job file, draft 2020-12. The log is what counts; `document` is the view of it.
 *
 * What makes it is read only when someone asks: no study needs it, and reading it takes as long as many studies.
 */
export async function jobFileSchema(): Promise<object> {
  const { jobFileShape } = await import('./json-shapes.ts');
  return jobFileShape();
}
