/** Which documents are jobs: libraries are documents too. */
export function isJob(doc: string): boolean {
  return !doc.startsWith('library-');
}
