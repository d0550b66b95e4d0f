/** What was typed and not yet entered: still there when the page is left and opened again, or loaded anew. */
const kept = new Map<string, string>();

export function draftOf(key: string): string {
  try {
    return kept.get(key) ?? sessionStorage.getItem(`firstfire-typed-${key}`) ?? '';
  } catch {
    return kept.get(key) ?? '';
  }
}

export function keepDraft(key: string, typed: string): void {
  if (typed === '') kept.delete(key);
  else kept.set(key, typed);
  try {
    if (typed === '') sessionStorage.removeItem(`firstfire-typed-${key}`);
    else sessionStorage.setItem(`firstfire-typed-${key}`, typed);
  } catch {
    // It lasts as long as the tab.
  }
}
